import { jointResults } from '../../../grading/live-tests/joint-result.ts';
import type { JointResult } from '../../../grading/live-tests/results.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { figureIn, rise } from '../../../text/live-tests/results/figures.ts';
import { jointWords as say } from '../../../text/live-tests/results/joint.ts';
import type { Block, ResultBlock, Working } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, only, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Joints under load: how warm they get, now and at the promised current, and their resistance. */
export function jointBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(jointResults(context), id, ({ joint }) => joint.id).map((result) => jointBlock(result, context)),
  );
}

function jointBlock(result: JointResult, context: LiveContext): ResultBlock {
  const { joint, riseAtRatedK, resistanceMicroohm } = result;
  const { units } = context;
  const temperature = (degC: number) => formatTemperature(degC, units);
  return {
    kind: 'result',
    id: `joint-${joint.id}`,
    title: testTitle(
      testName(say.one, context.tests.joints, joint.id),
      joint,
      joint.label?.trim(),
      say.places[joint.place],
    ),
    value: shownValue(result, context),
    marks: [],
    rows: [
      ...figureRow(say.labels.atRated, riseAtRatedK, { say: (k) => say.rise(rise(k, units)), note: say.steady }),
      ...figureRow(say.labels.resistance, resistanceMicroohm, { say: (microohm) => figureIn(microohm, 'µΩ') }),
      ...figureRow(say.labels.current, joint.currentA, { say: (a) => figureIn(a, 'A') }),
      ...figureRow(say.labels.after, joint.afterMin, { say: (min) => figureIn(min, 'min') }),
      ...figureRow(say.labels.joint, joint.jointDegC, { say: temperature }),
      ...figureRow(say.labels.around, joint.aroundDegC, { say: temperature }),
      ...figureRow(say.labels.drop, joint.dropMv, { say: (mv) => figureIn(mv, 'mV') }),
      ...closingRows(joint, context),
    ],
    working: workingOfJoint(result, context),
  };
}

function shownValue({ riseK, resistanceMicroohm }: JointResult, { units }: LiveContext): string {
  if (riseK !== null) {
    return riseK < 0 ? say.colder(rise(-riseK, units)) : say.rise(rise(riseK, units));
  }
  return resistanceMicroohm === null ? say.nothing : figureIn(resistanceMicroohm, 'µΩ');
}

function workingOfJoint(
  { joint, riseK, ratedA, riseAtRatedK, resistanceMicroohm }: JointResult,
  context: LiveContext,
): Working | null {
  const { formulas, inputs } = say;
  const scaled = riseAtRatedK !== null;
  const resisted = resistanceMicroohm !== null;
  return workingOf({
    formulas: [...(scaled ? [formulas.rise] : []), ...(resisted ? [formulas.resistance] : [])],
    inputs: [
      ...figureRow(inputs.rise, riseK, { say: (k) => rise(k, context.units) }),
      ...figureRow(inputs.current, joint.currentA, { say: (a) => figureIn(a, 'A') }),
      ...figureRow(inputs.rated, ratedA, { say: (a) => figureIn(a, 'A') }),
      ...figureRow(inputs.drop, joint.dropMv, { say: (mv) => figureIn(mv, 'mV') }),
    ].map(({ label, value }) => ({ label, value })),
    sources: [...(scaled ? (['jointRise'] as const) : []), ...(resisted ? (['ohm'] as const) : [])],
  });
}
