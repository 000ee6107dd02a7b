import type { WithstandResult } from '../../../grading/live-tests/results.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { duration, figureIn } from '../../../text/live-tests/results/figures.ts';
import { overcurrentWords as say } from '../../../text/live-tests/results/over-current.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { ResultRow, Working } from '../sheet.ts';
import { leadName } from './lead-name.ts';
import type { LiveContext } from './live-context.ts';
import { row } from './test-rows.ts';

/** "at least 12.4 s": past 5 s heat escapes, so it is a lower bound. */
export function withstandTime({ timeS, bound }: Pick<WithstandResult, 'timeS' | 'bound'>): string {
  const time = duration(Number(timeS.toPrecision(3)));
  return bound === 'atLeast' ? testWords.atLeast(time) : time;
}

/** How long the main lead that stands it for the shortest time stands the highest current tried. */
export function withstandRow(withstand: WithstandResult, context: LiveContext): ResultRow[] {
  const { currentA, eachA, leadId, startFrom, startDegC } = withstand;
  const start = formatTemperature(startDegC, context.units);
  return row(
    say.labels.withstand,
    say.heldFor(figureIn(currentA, 'A'), withstandTime(withstand)),
    testWords.listed([
      leadName(leadId, context),
      ...(eachA === currentA ? [] : [say.each(figureIn(eachA, 'A'))]),
      startFrom === 'insulationMark' ? say.startMark(start) : say.startAround(start),
    ]),
  );
}

export function withstandInputs(withstand: WithstandResult, { units }: LiveContext): Working['inputs'] {
  const { withstandInputs: inputs } = say;
  return [
    { label: inputs.k, value: figureIn(withstand.kAs05PerMm2, say.kUnit) },
    { label: inputs.current, value: figureIn(withstand.eachA, 'A') },
    { label: inputs.start, value: formatTemperature(withstand.startDegC, units) },
    { label: inputs.end, value: formatTemperature(Number(withstand.finalDegC.toPrecision(3)), units) },
  ];
}
