import type { CellBarsInput } from '../../../src/drawing/cell-bars.ts';
import type { LogOverviewInput } from '../../../src/drawing/log-overview.ts';
import type { RunCurve, RunPlotInput } from '../../../src/drawing/run-plot.ts';
import type { SharingBarsInput } from '../../../src/drawing/sharing-bars.ts';
import type { TripPlotInput } from '../../../src/drawing/trip-plot.ts';

export const tick = (value: number, decimals: number): string => value.toFixed(decimals);
export const alt = 'What the plot says';
export const nothing = 'Nothing to draw yet';

/** A flat 26 V with a knee to 20 V at the end of so many Ah, one sample per percent, at a steady current. */
export function steadyRun(
  label: string,
  currentA: number,
  capacityAh: number,
  change: Partial<RunCurve> = {},
): RunCurve {
  const steps = Array.from({ length: 101 }, (_, percent) => percent / 100);
  return {
    label,
    timeS: steps.map((frac) => 500 + ((frac * capacityAh) / currentA) * 3600),
    voltageV: steps.map((frac) => (frac <= 0.9 ? 26 : 26 - (frac - 0.9) * 60)),
    currentA: steps.map(() => currentA),
    chargeAh: steps.map((frac) => frac * capacityAh),
    end: 'lowVoltage',
    cutOffVoltageV: null,
    ...change,
  };
}

export function runInput(change: Partial<RunPlotInput> = {}): RunPlotInput {
  return {
    width: 358,
    height: 320,
    by: 'charge',
    runs: [steadyRun('20 A', 20, 100)],
    voltage: true,
    current: true,
    words: {
      alt,
      nothing,
      voltage: 'Voltage, V',
      current: 'Current, A',
      charge: 'Charge, Ah',
      seconds: 'Time, s',
      minutes: 'Time, min',
      hours: 'Time, h',
      ends: {
        lowVoltage: 'low voltage',
        packDisconnect: 'pack opened',
        stopped: 'stopped',
        taper: 'tapered off',
        unclear: 'cannot be told',
      },
      cutOff: (voltageV) => `cut-off ${voltageV.toFixed(1)} V`,
      notDrawn: (labels) => `Not drawn: ${labels.join(', ')}`,
      tick,
    },
    ...change,
  };
}

export function tripInput(change: Partial<TripPlotInput> = {}): TripPlotInput {
  return {
    width: 358,
    height: 320,
    trips: [
      { currentA: 150, timeS: 60, opened: false, label: '150 A, held' },
      { currentA: 400, timeS: 0.1, opened: true, label: '400 A, opened' },
    ],
    // Copper, PVC: k = 115 A·s^½/mm² (BS 7671 table 43.1), 10 mm²: t = (1150/I)².
    withstand: [
      {
        label: 'lead',
        points: [115, 1150].map((currentA) => ({ currentA, timeS: (1150 / currentA) ** 2 })),
      },
    ],
    fuse: { label: 'fuse', gates: [{ currentA: 250, minTimeS: 2, maxTimeS: 60 }] },
    continuousA: 100,
    words: {
      alt,
      nothing,
      current: 'Current, A',
      time: 'Time, s',
      opened: 'opened',
      held: 'held',
      lowerBound: 'at least',
      continuous: 'claim',
      tickA: (currentA) => `${currentA} A`,
      tickS: (timeS) => `${timeS} s`,
    },
    ...change,
  };
}

export function cellInput(values: readonly (number | null)[], change: Partial<CellBarsInput> = {}): CellBarsInput {
  return {
    width: 358,
    cells: values.map((value, place) => ({
      label: `cell ${place + 1}`,
      value,
      text: value === null ? 'not read' : value.toFixed(3),
      flagged: false,
    })),
    lowText: 'lowest',
    highText: 'highest',
    spreadText: 'spread',
    unitText: 'Cell voltage, V',
    words: { alt, nothing, brokenAxis: 'Not from 0', flagged: 'apart', tick },
    ...change,
  };
}

export function sharingInput(shares: readonly (number | null)[]): SharingBarsInput {
  return {
    width: 358,
    strings: shares.map((shareFrac, place) => ({
      label: `string ${place + 1}`,
      shareFrac,
      text: shareFrac === null ? 'not read' : `${(shareFrac * 100).toFixed(1)} %`,
    })),
    words: {
      alt,
      nothing,
      equal: 'equal share',
      share: 'Share of the charge',
      tick: (shareFrac) => `${Math.round(shareFrac * 100)} %`,
    },
  };
}

export function overviewInput(change: Partial<LogOverviewInput> = {}): LogOverviewInput {
  const timeS = Array.from({ length: 101 }, (_, place) => 7000 + place * 360);
  return {
    width: 358,
    height: 220,
    timeS,
    voltageV: timeS.map((_, place) => 26 - (place % 50) / 10),
    currentA: timeS.map((_, place) => (place % 50 < 25 ? 20 : -20)),
    bands: [
      { fromS: 7000, toS: 7000 + 9000, label: 'run 1', chosen: true },
      { fromS: 7000 + 18000, toS: 7000 + 27000, label: 'run 2', chosen: false },
    ],
    words: {
      alt,
      nothing,
      voltage: 'Voltage, V',
      current: 'Current, A',
      seconds: 'Time, s',
      minutes: 'Time, min',
      hours: 'Time, h',
      tick,
    },
    ...change,
  };
}
