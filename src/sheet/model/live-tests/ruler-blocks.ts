import type { RulerResult } from '../../../grading/live-tests/results.ts';
import { rulerResults } from '../../../grading/live-tests/ruler-results.ts';
import { formatLength } from '../../../text/format-unit.ts';
import { rulerWords as say } from '../../../text/live-tests/results/ruler.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { figureRow, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Distances taken from photos by a card, each with how sure it is. */
export function rulerBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(rulerResults(context), id, ({ ruler }) => ruler.id).map((result) => rulerBlock(result, context)),
  );
}

function rulerBlock({ ruler, distance }: RulerResult, context: LiveContext): ResultBlock {
  const length = (mm: number) => formatLength(Number(mm.toPrecision(3)), context.units);
  return {
    kind: 'result',
    id: `ruler-${ruler.id}`,
    title: testTitle(testName(say.one, context.tests.rulers, ruler.id), {}, ruler.label?.trim()),
    value: distance === null ? say.none : length(distance.distanceMm),
    marks: [],
    rows: distance === null ? row(say.labels.why, say.why) : uncertaintyRows(distance, length),
    working:
      distance === null
        ? null
        : workingOf({
            formulas: [say.formula],
            inputs: inputsOf(ruler, length),
            uncertainty: say.uncertaintyBasis,
            sources: ['idCard'],
          }),
  };
}

type Length = (mm: number) => string;

function uncertaintyRows(distance: NonNullable<RulerResult['distance']>, length: Length): ResultRow[] {
  const within = (mm: number) => say.plusMinus(length(Number(mm.toPrecision(2))));
  return [
    ...row(
      say.labels.uncertainty,
      distance.uncertaintyMm === null ? say.offPlaneNotSaid : within(distance.uncertaintyMm),
    ),
    ...row(say.labels.placement, within(distance.placementMm)),
    ...figureRow(say.labels.offPlane, distance.offPlaneMm, { say: within }),
  ];
}

function inputsOf({ offPlaneMm, cameraMm }: RulerResult['ruler'], length: Length) {
  return [
    ...figureRow(say.inputs.offPlane, offPlaneMm, { say: length }),
    ...row(say.inputs.camera, cameraMm === undefined ? say.cameraTaken : length(cameraMm)),
  ].map(({ label, value }) => ({ label, value }));
}
