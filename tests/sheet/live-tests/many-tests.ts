import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import { fullRun, idOf, MADE, mainLead, PACK_300, trip } from './bench-tests.ts';

/**
 * Volts of an invented pack of four LFP cells under load by how much of it was drawn: a plateau that sinks a little, a
 * rise above it at the start and a knee at the end.
 */
function packV(drawnFrac: number, loadA: number): number {
  const cellV = 3.3 - 0.1 * drawnFrac + 0.15 * Math.exp(-drawnFrac / 0.02) - 0.9 * Math.exp((drawnFrac - 1) / 0.02);
  return 4 * cellV - 0.002 * loadA;
}

function curve({ chargeAh, currentA, upToFrac }: { chargeAh: number; currentA: number; upToFrac: number }) {
  const fracs = Array.from({ length: 200 }, (_, place) => (upToFrac * place) / 199);
  return {
    timeS: fracs.map((frac) => (frac * chargeAh * 3600) / currentA),
    voltageV: fracs.map((frac) => packV(frac, currentA)),
    currentA: fracs.map(() => currentA),
    chargeAh: fracs.map((frac) => frac * chargeAh),
  };
}

const LOG_ID = '7'.repeat(64);
const cells = (voltagesV: readonly number[]) =>
  voltagesV.map((voltageV, place) => ({
    number: place + 1,
    voltageV,
    resistanceMohm: 0.19 + 0.01 * place,
    bmsVoltageV: voltageV + 0.004,
  }));

/** An invented pack with a test of every kind, several of most. */
export const MANY_TESTS: LiveTests = {
  instruments: [
    {
      id: idOf('a'),
      made: MADE,
      name: 'Load 1',
      voltageReadingPct: 0.05,
      voltageAbsoluteV: 0.01,
      currentReadingPct: 0.2,
      currentAbsoluteA: 0.05,
    },
    { id: idOf('b'), made: MADE, name: 'Clamp' },
  ],
  logs: [{ id: LOG_ID, made: MADE, name: 'hut-300-hard.csv', byteCount: 120_000, rowCount: 3000 }],
  runs: [
    fullRun(1, {
      label: 'gentle',
      on: '2026-11-20',
      chargeAh: 292.2,
      energyWh: 3790,
      currentA: 60,
      durationS: 17_532,
      instrumentId: idOf('a'),
      ambientDegC: 21,
      cellStartDegC: 21,
      cellEndDegC: 24,
      sensePoint: 'packPosts',
      curve: curve({ chargeAh: 292.2, currentA: 60, upToFrac: 1 }),
    }),
    fullRun(2, {
      label: 'hard',
      on: '2026-11-21',
      chargeAh: 292.0,
      energyWh: 3712.345678,
      currentA: 200,
      durationS: 5256,
      instrumentId: idOf('a'),
      openedBy: 'bms',
      sensePoint: 'loadEnd',
      log: {
        logId: LOG_ID,
        firstLine: 12,
        lastLine: 2990,
        rowCount: 2979,
        gapCount: 2,
        longestGapS: 75,
        counterChargeAh: 292.3,
        mapping: {},
      },
      evidence: { middleVoltageV: 12.6, lastVoltageV: 10.1, dropFrac: 0.198, voltagePerCellV: 2.525, slopeRatio: 41 },
      curve: curve({ chargeAh: 292.0, currentA: 200, upToFrac: 1 }),
    }),
    fullRun(3, {
      label: 'cold morning',
      on: '2026-11-23',
      chargeAh: 241.7,
      currentA: 200,
      end: 'packDisconnect',
      instrumentId: idOf('b'),
      curve: curve({ chargeAh: 292.0, currentA: 200, upToFrac: 0.83 }),
      note: 'It simply went dark. The load read 0 V.',
    }),
    { id: idOf(4), made: MADE, chargeAh: 120, end: 'stopped', on: '2026-11-24' },
  ],
  trips: [
    trip(1, { currentA: 400, heldForS: 0, opened: true, recovery: 'loadOff', recoveredAfterS: 32, on: '2026-11-22' }),
    trip(2, { currentA: 220, heldForS: 8, opened: true }),
    trip(3, { currentA: 205, heldForS: 60, opened: false, heatSeen: true }),
  ],
  leads: [
    mainLead(1, { label: 'plus', lengthMm: 400 }),
    mainLead(2, { label: 'minus', printedMm2: 50, lengthMm: 350 }),
  ],
  cutOffs: [
    { id: idOf(1), made: MADE, kind: 'highVoltage', acted: true, worstCellVoltageV: 3.68, recovery: 'byItself' },
    {
      id: idOf(2),
      made: MADE,
      kind: 'lowVoltage',
      acted: true,
      worstCellVoltageV: 2.4,
      recovery: 'chargerOn',
      wakeUp: 'anyCharger',
      recoveredAtV: 11.2,
    },
    {
      id: idOf(3),
      made: MADE,
      kind: 'coldCharge',
      acted: true,
      sensorDegC: -4,
      method: 'icePack',
      recovery: 'byItself',
      recoveredAtDegC: 3,
    },
    {
      id: idOf(4),
      made: MADE,
      kind: 'hotDischarge',
      acted: true,
      by: 'thermalSwitch',
      switchFitted: true,
      sensorDegC: 84,
      sensorAfter: 'melted',
    },
  ],
  sensorGates: [],
  cellSets: [
    {
      id: idOf(1),
      made: MADE,
      state: 'rested',
      restedMin: 90,
      resistanceBy: 'ac',
      on: '2026-11-24',
      cells: cells([3.31, 3.312, 3.15, 3.36]),
    },
    { id: idOf(2), made: MADE, state: 'nearFull', cells: cells([3.451, 3.449, 3.62]) },
  ],
  resistances: [
    {
      id: idOf(1),
      made: MADE,
      method: 'twoStep',
      of: 'pack',
      firstA: 60,
      firstV: 13.08,
      secondA: 200,
      secondV: 12.8,
      afterS: 1,
    },
    {
      id: idOf(2),
      made: MADE,
      method: 'pulse',
      of: 'cell',
      cellNumber: 3,
      firstA: 0,
      firstV: 3.45,
      secondA: 100,
      secondV: 3.42,
      afterS: 10,
    },
  ],
  joints: [
    {
      id: idOf(1),
      made: MADE,
      place: 'terminal',
      label: 'plus post',
      currentA: 100,
      afterMin: 20,
      jointDegC: 41.3,
      aroundDegC: 21.2,
      dropMv: 12,
    },
  ],
  drains: [{ id: idOf(1), made: MADE, currentMa: 8, mode: 'asleep' }],
  parallelRuns: [
    {
      id: idOf(1),
      made: MADE,
      of: 'packs',
      currentA: 200,
      shares: [
        { number: 1, label: 'near the load', chargeAh: 160, highestA: 118 },
        { number: 2, chargeAh: 140, highestA: 92 },
      ],
    },
  ],
  readOuts: [{ id: idOf(1), made: MADE, way: 'wireless', connected: true, rangeM: 8, accountNeeded: true }],
  cellMarks: [
    { id: idOf(1), made: MADE, text: '04QCB76G50203JB8R0001234', read: 'photo', symbology: 'QRCode', cellNumber: 1 },
  ],
  rulers: [
    {
      id: idOf(1),
      made: MADE,
      photoId: '1'.padStart(64, '0'),
      corners: [
        [0.1, 0.1],
        [0.6, 0.1],
        [0.6, 0.52],
        [0.1, 0.52],
      ],
      from: [0.2, 0.7],
      to: [0.4, 0.7],
      label: 'plus lead, bare strands',
      offPlaneMm: 5,
    },
  ],
};

export const MANY_NAMEPLATE = {
  ...PACK_300,
  cutOffVoltageV: 10,
  stringsInParallel: 1,
  currency: 'EUR',
  pricedOn: '2026-10-01',
};
