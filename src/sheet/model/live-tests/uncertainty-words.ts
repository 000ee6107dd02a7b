import type { RunResult } from '../../../grading/live-tests/results.ts';
import type { Instrument } from '../../../schema/live-tests/instrument.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { runWords } from '../../../text/live-tests/results/run.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';

const say = runWords.uncertainty;

/** On whose stated accuracy the uncertainty of these runs rests; null where none is given. */
export function uncertaintyBasis(runs: readonly RunResult[], ids: readonly string[]): string | null {
  const given = runs.filter(({ run, chargeUncertaintyAh }) => ids.includes(run.id) && chargeUncertaintyAh !== null);
  const words = given.flatMap(({ instrument, energyUncertaintyWh }) =>
    instrument === null ? [] : [basisOf(instrument, energyUncertaintyWh !== null)],
  );
  return words.length === 0 ? null : testWords.sentenced([...new Set(words)]);
}

/** Why a run has no uncertainty; null where it has one, or no charge that could have one. */
export function uncertaintyLacks({ run, instrument, chargeUncertaintyAh }: RunResult): string | null {
  if (chargeUncertaintyAh !== null || run.chargeAh === undefined) return null;
  return instrument === null ? say.noInstrument : say.notStated;
}

function basisOf(instrument: Instrument, ofEnergy: boolean): string {
  const current = accuracy(instrument.currentReadingPct, [instrument.currentAbsoluteA, 'A']);
  const voltage = accuracy(instrument.voltageReadingPct, [instrument.voltageAbsoluteV, 'V']);
  const charge = say.basis(instrument.name, current ?? testWords.notSaid);
  return ofEnergy && voltage !== null ? testWords.sentenced([charge, say.voltageBasis(voltage)]) : charge;
}

/** "0.5 % of the reading + 0.02 A"; null unless both parts are stated. */
function accuracy(readingPct: number | undefined, [absolute, unit]: [number | undefined, string]): string | null {
  if (readingPct === undefined || absolute === undefined) return null;
  return say.accuracy(formatValue(readingPct, '%'), formatValue(absolute, unit));
}
