import { cRatePerH } from '../../calc/c-rate.ts';
import { completeRun } from '../../calc/complete-run.ts';
import { chargeUncertaintyAh, energyUncertaintyWh, type MeterAccuracy } from '../../calc/meter-uncertainty.ts';
import { chargeShareFrac } from '../../calc/share-of-nameplate.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import type { RunResult } from './results.ts';

const S_PER_H = 3600;

type TestedRun = Tested['tests']['runs'][number];

/** What one run comes to by itself. */
export function runResult(run: TestedRun, { nameplate, tests }: Tested): RunResult {
  const { chargeAh, durationS } = run;
  const { ratedCapacityAh } = nameplate;
  const instrument = tests.instruments.find(({ id }) => id === run.instrumentId) ?? null;
  const energyWh = run.energyWh ?? null;
  const currentA =
    run.currentA ?? (chargeAh === undefined || durationS === undefined ? null : (chargeAh * S_PER_H) / durationS);
  const result = {
    run,
    instrument,
    currentA,
    completeness: completeRun(conditionsOf(run, nameplate)),
    ratePerH: currentA === null || ratedCapacityAh === undefined ? null : cRatePerH({ currentA, ratedCapacityAh }),
    shareOfRatedFrac:
      chargeAh === undefined || ratedCapacityAh === undefined ? null : chargeShareFrac({ chargeAh, ratedCapacityAh }),
    energyWh,
    meanVoltageV: run.meanVoltageV ?? (energyWh === null || chargeAh === undefined ? null : energyWh / chargeAh),
  };
  return { ...result, ...uncertaintiesOf(result) };
}

function conditionsOf({ end, chargedToV, taperA, restMin }: TestedRun, nameplate: Nameplate) {
  return {
    end: end ?? null,
    chargedToV,
    taperA,
    restMin,
    makerChargeVoltageV: nameplate.chargeVoltageV,
    ratedCapacityAh: nameplate.ratedCapacityAh,
  };
}

function uncertaintiesOf(
  result: Pick<RunResult, 'run' | 'instrument' | 'currentA' | 'energyWh' | 'meanVoltageV'>,
): Pick<RunResult, 'chargeUncertaintyAh' | 'energyUncertaintyWh'> {
  const { run, instrument, currentA, energyWh, meanVoltageV } = result;
  const { chargeAh } = run;
  const current = accuracyOf(instrument?.currentReadingPct, instrument?.currentAbsoluteA);
  const voltage = accuracyOf(instrument?.voltageReadingPct, instrument?.voltageAbsoluteV);
  if (current === null || chargeAh === undefined || currentA === null) {
    return { chargeUncertaintyAh: null, energyUncertaintyWh: null };
  }
  const charge = { chargeAh, durationS: run.durationS ?? (chargeAh / currentA) * S_PER_H, current };
  return {
    chargeUncertaintyAh: chargeUncertaintyAh(charge),
    energyUncertaintyWh:
      voltage === null || energyWh === null || meanVoltageV === null
        ? null
        : energyUncertaintyWh({ ...charge, energyWh, meanVoltageV, voltage }),
  };
}

/** A part that was not noted is not 0: without it nothing is told. */
function accuracyOf(readingPct: number | undefined, absolute: number | undefined): MeterAccuracy | null {
  return readingPct === undefined || absolute === undefined ? null : { readingFrac: readingPct / 100, absolute };
}
