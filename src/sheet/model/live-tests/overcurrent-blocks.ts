import { overcurrentResult } from '../../../grading/live-tests/overcurrent-result.ts';
import type { OvercurrentResult } from '../../../grading/live-tests/results.ts';
import type { Trip } from '../../../schema/live-tests/trip.ts';
import { duration, figure, figureIn } from '../../../text/live-tests/results/figures.ts';
import { overcurrentWords as say } from '../../../text/live-tests/results/over-current.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import { drawnFuse } from './drawn-fuse.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, row, testName, testTitle } from './test-rows.ts';
import { tripPlotBlock } from './trip-plot-block.ts';
import { tripWords } from './trip-words.ts';
import { withstandInputs, withstandRow } from './withstand-words.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** What the pack does about too much current: the verdict, the plot, and every trip. Nothing without a trip. */
export function overcurrentBlocks(context: LiveContext): Block[] {
  if (context.tests.trips.length === 0) return [];
  return workedOut(say.matter, () => {
    const result = overcurrentResult(context);
    return [
      verdictBlock(result, context),
      tripPlotBlock(result, context),
      ...result.trips.map((trip) => tripBlock(trip, context)),
    ];
  });
}

function verdictBlock({ behaviour, withstand }: OvercurrentResult, context: LiveContext): ResultBlock {
  const { continuousCurrentA } = context.nameplate;
  const fuse = drawnFuse(context);
  return {
    kind: 'result',
    id: 'overcurrent',
    title: say.title,
    value: verdictWords(behaviour),
    marks: [],
    rows: [
      ...behaviourRows(behaviour),
      ...figureRow(say.labels.continuous, continuousCurrentA, { say: (a) => figureIn(a, 'A') }),
      ...(continuousCurrentA === undefined ? row(say.labels.continuous, testWords.notSaid, say.noClaimNote) : []),
      ...(behaviour.verdict === 'notTested' ? row(say.labels.needed, say.notTestedNote) : []),
      ...(withstand === null ? row(say.labels.withstand, say.unknownWithstand) : withstandRow(withstand, context)),
      ...(behaviour.verdict === 'heatOnly' || behaviour.verdict === 'noneSeen'
        ? row(say.labels.remedy, say.fuseRemedy)
        : []),
    ],
    working: workingOf({
      formulas: [
        say.verdictFormula,
        ...(continuousCurrentA === undefined ? [] : [say.countsFormula]),
        ...(withstand === null ? [] : [say.withstandFormula]),
      ],
      inputs: withstand === null ? [] : withstandInputs(withstand, context),
      sources: [
        'overcurrent',
        ...(withstand === null ? [] : (['withstand'] as const)),
        ...(fuse === null ? [] : [fuse.source]),
      ],
    }),
  };
}

function verdictWords({ verdict, kinds }: OvercurrentResult['behaviour']): string {
  if (verdict !== 'tripped') return say.verdicts[verdict];
  return say.verdicts.tripped(say.kindsJoined(kinds.map((kind) => say.kinds[kind])));
}

function behaviourRows(behaviour: OvercurrentResult['behaviour']): ResultRow[] {
  const { slowestS, slowestAtA, heatAtA, heatAfterS } = behaviour;
  const { highestHeldA, highestHeldForS, longestHeldForS, longestHeldAtA } = behaviour;
  const pair = (currentA: number | null, timeS: number | null, words: (current: string, time: string) => string) =>
    currentA === null || timeS === null
      ? null
      : words(figureIn(currentA, 'A'), timeS === 0 ? say.atOnce : duration(timeS));
  const isSame = highestHeldA === longestHeldAtA && highestHeldForS === longestHeldForS;
  return [
    ...row(say.labels.slowest, pair(slowestAtA, slowestS, say.after)),
    ...row(say.labels.heat, pair(heatAtA, heatAfterS, say.after)),
    ...row(say.labels.held, pair(highestHeldA, highestHeldForS, say.heldFor)),
    ...(isSame ? [] : row(say.labels.longest, pair(longestHeldAtA, longestHeldForS, say.heldFor))),
  ];
}

function tripBlock(trip: OvercurrentResult['trips'][number], context: LiveContext): ResultBlock {
  const { continuousCurrentA } = context.nameplate;
  const seen = [
    ...(trip.heatSeen === true ? [say.heatSeen] : []),
    ...(trip.coolingNeeded === true ? [say.coolingNeeded] : []),
  ];
  return {
    kind: 'result',
    id: `trip-${trip.id}`,
    title: testTitle(testName(say.one, context.tests.trips, trip.id), trip),
    value: testWords.titled([figureIn(trip.currentA, 'A'), tripWords(trip)]),
    marks: [],
    rows: [
      ...row(say.labels.what, testWords.listed(seen)),
      ...figureRow(
        say.labels.share,
        continuousCurrentA === undefined ? null : Number((trip.currentA / continuousCurrentA).toPrecision(3)),
        { say: (times) => say.times(figure(times)) },
      ),
      ...row(say.labels.recovery, recoveryWords(trip)),
      ...closingRows(trip, context),
    ],
    working: null,
  };
}

function recoveryWords({ recovery, recoveredAfterS }: Trip): string | null {
  if (recovery === undefined) return null;
  const how = say.recoveries[recovery];
  return recoveredAfterS === undefined ? how : say.recoveredAfter(how, duration(recoveredAfterS));
}
