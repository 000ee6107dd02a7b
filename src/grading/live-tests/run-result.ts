import { cRatePerH } from '../../calc/c-rate.ts';
import { completeRun } from '../../calc/complete-run.ts';
import { chargeUncertaintyAh, energyUncertaintyWh, type MeterAccuracy } from '../../calc/meter-uncertainty.ts';
import { chargeShareFrac } from '../../calc/share-of-nameplate.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import type { RunResult } from './results.ts';

const S_PER_H = 3600;

type TestedRun = Tested['tests']['runs'][number];
type Instrument = NonNullable<RunResult['instrument']>;

/** What one run comes to by itself. */
export function runResult(run: TestedRun, { nameplate, tests }: Tested): RunResult {
  const { chargeAh, durationS } = run;
  const { ratedCapacityAh } = nameplate;
  const instrument = tests.instruments.find(({ id }) => id === run.instrumentId) ?? null;
  const energyWh = run.energyWh ?? null;
  const currentA = run.currentA ?? (known(chargeAh, durationS) ? (chargeAh * S_PER_H) / durationS : null);
  const noted = known(energyWh, chargeAh) ? energyWh / chargeAh : null;
  const result = {
    run,
    instrument,
    currentA,
    completeness: completeRun(conditionsOf(run, nameplate)),
    ratePerH: known(currentA, ratedCapacityAh) ? cRatePerH({ currentA, ratedCapacityAh }) : null,
    shareOfRatedFrac: known(chargeAh, ratedCapacityAh) ? chargeShareFrac({ chargeAh, ratedCapacityAh }) : null,
    energyWh,
    meanVoltageV: run.meanVoltageV ?? noted,
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
  const none = { chargeUncertaintyAh: null, energyUncertaintyWh: null };
  const current = instrument === null ? null : currentAccuracy(instrument);
  if (instrument === null || current === null || !known(chargeAh, currentA)) return none;
  const durationS = run.durationS ?? (chargeAh / currentA) * S_PER_H;
  const charge = { chargeAh, durationS, current };
  const voltage = voltageAccuracy(instrument);
  const canTellEnergy = known(energyWh, meanVoltageV) && voltage !== null;
  return {
    chargeUncertaintyAh: chargeUncertaintyAh(charge),
    energyUncertaintyWh: canTellEnergy ? energyUncertaintyWh({ ...charge, energyWh, meanVoltageV, voltage }) : null,
  };
}

function currentAccuracy({ currentReadingPct, currentAbsoluteA }: Instrument): MeterAccuracy | null {
  return accuracyOf(currentReadingPct, currentAbsoluteA);
}

function voltageAccuracy({ voltageReadingPct, voltageAbsoluteV }: Instrument): MeterAccuracy | null {
  return accuracyOf(voltageReadingPct, voltageAbsoluteV);
}

/** A part that was not noted is not 0: without it nothing is told. */
function accuracyOf(readingPct: number | undefined, absolute: number | undefined): MeterAccuracy | null {
  if (readingPct === undefined || absolute === undefined) return null;
  return { readingFrac: readingPct / 100, absolute };
}
