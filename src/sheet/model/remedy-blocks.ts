import type { Range, RemedyResult } from '../../grading/grading.ts';
import { formatFixed, formatScore, formatSpan } from '../../text/format-number.ts';
import { remedyWords } from '../../text/remedies.ts';
import { listOf, sheetWords } from '../../text/sheet.ts';
import { fuseSentence } from './live-tests/fuse-blocks.ts';
import { costAfterBlocks } from './remedy-cost-blocks.ts';
import { takesOf } from './remedy-takes.ts';
import { afterSettled } from './result-blocks.ts';
import type { Block, Figure, RemedyBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** Remedies in their order with what each gains, and both after-scores. */
export function remedyBlocks(context: SheetContext): Block[] {
  const { grading } = context;
  const words = sheetWords.remedies;
  if (grading.remedies.length === 0) return [{ kind: 'paragraph', text: words.none, tone: 'plain' }];
  return [
    { kind: 'paragraph', text: words.intro, tone: 'muted' },
    ...grading.remedies.map((remedy, place) => remedyBlock(context, remedy, place + 1)),
    ...afterBlock(context),
    ...costAfterBlocks(context),
  ];
}

/** One remedy as printed: what it is, what it takes, what it gains. */
export function remedyBlock(context: SheetContext, remedy: RemedyResult, number: number): RemedyBlock {
  const words = sheetWords.remedies;
  const withheld = context.grading.score === null;
  const hazards = remedy.clearsHazardIds.map((id) => context.hazardOf(id).title);
  const settledSoFar = {
    settled: context.grading.settled,
    remedies: context.grading.remedies.slice(0, number),
  };
  const settled = afterSettled(settledSoFar, 'workshop');
  return {
    kind: 'remedy',
    remedyId: remedy.remedyId,
    number,
    text: remedyText(context, remedy.remedyId),
    reachWord: words[remedy.reach],
    clears: hazards.length === 0 ? null : words.clears(listOf(hazards)),
    gain: withheld ? null : words.gain(gainWords(remedy.gain, settled)),
    after: withheld ? null : words.after(formatScore(remedy.cumulative, settled)),
    open: remedy.ruledOut !== undefined ? remedyWords.ruledOut : remedy.open === undefined ? null : words.fuseOpen,
    ...takesOf(context, remedy.remedyId),
  };
}

/** The remedy as the checklist has it; one that fits a fuse says which, once that can be told. */
export function remedyText({ definition, record, units }: SheetContext, remedyId: string): string {
  const remedy = definition.remedies.find(({ id }) => id === remedyId);
  if (remedy === undefined) return remedyId;
  const advice = remedy.needs === 'fuseFits' ? fuseSentence({ ...record, units }) : null;
  return advice === null ? remedy.text : `${remedy.text} ${advice}`;
}

/** Gains at the two ends need not come in order: the smaller is said first. */
function gainWords(gain: Range, settled: boolean): string {
  if (settled) return formatFixed(gain.low, 1);
  return formatSpan({ low: Math.min(gain.low, gain.high), high: Math.max(gain.low, gain.high) });
}

function afterBlock({ grading }: SheetContext): Block[] {
  const { outside, workshop } = grading.after;
  if (outside === null || workshop === null || grading.score === null) return [];
  const figures: Figure[] = [
    { label: sheetWords.figures.score, value: formatScore(grading.score, grading.settled) },
    { label: sheetWords.figures.afterOutside, value: formatScore(outside, afterSettled(grading, 'outside')) },
    { label: sheetWords.figures.afterWorkshop, value: formatScore(workshop, afterSettled(grading, 'workshop')) },
  ];
  return [{ kind: 'figures', figures }];
}
