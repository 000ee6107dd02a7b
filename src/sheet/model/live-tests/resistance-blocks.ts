import { resistanceResults } from '../../../grading/live-tests/resistance-result.ts';
import type { ResistanceResult } from '../../../grading/live-tests/results.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { duration, figureIn } from '../../../text/live-tests/results/figures.ts';
import { resistanceWords as say } from '../../../text/live-tests/results/resistance.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, Working } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Resistances from two loads or a pulse, or why there is no figure. */
export function resistanceBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(resistanceResults(context), id, ({ test }) => test.id).map((result) => resistanceBlock(result, context)),
  );
}

function resistanceBlock({ test, outcome }: ResistanceResult, context: LiveContext): ResultBlock {
  const of = test.of === 'cell' && test.cellNumber !== undefined ? say.ofCell(test.cellNumber) : say.of[test.of];
  const isTold = outcome?.ok === true;
  const because = outcome === null ? say.because.incomplete : outcome.ok ? null : say.because[outcome.because];
  return {
    kind: 'result',
    id: `resistance-${test.id}`,
    title: testTitle(testName(say.one, context.tests.resistances, test.id), test, of),
    value: isTold ? figureIn(outcome.resistanceMohm, 'mΩ') : say.refused,
    marks: [],
    rows: [
      ...row(say.labels.why, because),
      ...row(say.labels.method, say.methods[test.method]),
      ...figureRow(say.labels.after, test.afterS, { say: duration }),
      ...figureRow(say.labels.temperature, test.cellDegC, { say: (degC) => formatTemperature(degC, context.units) }),
      ...(isTold ? row(say.labels.difference, say.timeMatters) : []),
      ...closingRows(test, context),
    ],
    working:
      outcome === null
        ? null
        : workingOf({
            formulas: [say.formula],
            inputs: inputsOf(test),
            sources: [test.method === 'twoStep' ? 'twoStep' : 'ohm', 'refusedResistance'],
          }),
  };
}

function inputsOf({ firstA, firstV, secondA, secondV }: ResistanceResult['test']): Working['inputs'] {
  const reading = (voltageV: number | undefined, currentA: number | undefined) =>
    say.reading(
      voltageV === undefined ? testWords.notSaid : figureIn(voltageV, 'V'),
      currentA === undefined ? testWords.notSaid : figureIn(currentA, 'A'),
    );
  return [
    { label: say.labels.first, value: reading(firstV, firstA) },
    { label: say.labels.second, value: reading(secondV, secondA) },
  ];
}
