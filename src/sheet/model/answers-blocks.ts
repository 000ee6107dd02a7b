import type { LidOutcome } from '../../drawing/lid-glyph.ts';
import type { ItemResult } from '../../grading/grading.ts';
import { BECAUSE_WORDS, EVIDENCE_WORDS, GRADE_WORDS, LOWERED_BY_TOLD, OUTCOME_WORDS } from '../../text/grades.ts';
import { measuredWords } from '../../text/measured.ts';
import { sheetWords } from '../../text/sheet.ts';
import { foundWithReadings, gradeStanding } from './measured-words.ts';
import type { AnswerRow, Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** Every item asked, zone by zone, with what became of it: so that each point can be followed to its answer. */
export function answersBlocks(context: SheetContext): Block[] {
  const { grading, definition } = context;
  const zones = definition.zones.flatMap((zone): Block[] => {
    const rows = grading.items
      .filter((result) => result.zoneId === zone.id && result.because !== 'notAsked')
      .map((result) => answerRow(context, result));
    return rows.length === 0 ? [] : [{ kind: 'answers', zoneTitle: zone.title, rows }];
  });
  const notAsked = grading.items.filter(({ because }) => because === 'notAsked').length;
  return [
    ...zones,
    ...(notAsked === 0
      ? []
      : [{ kind: 'paragraph', text: sheetWords.answers.notAsked(notAsked), tone: 'muted' } satisfies Block]),
  ];
}

function answerRow(context: SheetContext, result: ItemResult): AnswerRow {
  const item = context.itemOf(result.itemId);
  const findings = new Set(context.grading.findings.map(({ itemId }) => itemId));
  // A finding's note stands with the finding; it is not printed twice.
  const note = findings.has(result.itemId) ? undefined : context.record.answers[result.itemId]?.note?.trim();
  const spoken = context.record.voices.filter(({ on }) => on.kind === 'item' && on.id === result.itemId);
  return {
    itemId: result.itemId,
    glyph: glyphOf(result),
    title: item.title,
    outcome: outcomeWords(context, result),
    marks: [
      ...(item.safety ? [sheetWords.answers.safety] : []),
      ...(item.stop ? [sheetWords.answers.stop] : []),
      ...(result.unlooked ? [sheetWords.answers.unlooked] : []),
      ...(spoken.length > 0 ? [sheetWords.answers.spoken(spoken.length)] : []),
    ],
    note: note ? { label: sheetWords.findings.note, text: note } : null,
  };
}

function glyphOf({ grade, possible }: ItemResult): LidOutcome {
  if (possible.length === 1 && possible[0] === 'doesNotApply') return 'doesNotApply';
  return grade ?? 'notSeen';
}

function outcomeWords({ record, itemOf }: SheetContext, result: ItemResult): string {
  const answer = record.answers[result.itemId];
  const found = foundWithReadings(itemOf(result.itemId), result.measured, answer);
  const standing = gradeStanding(result);
  if (result.possible.length === 1 && result.possible[0] === 'doesNotApply') {
    const reason = answer?.kind === 'doesNotApply' ? answer.reason : null;
    const words = result.because === 'factExcludes' ? BECAUSE_WORDS.factExcludes : OUTCOME_WORDS.doesNotApply;
    return reason === null ? words : `${words}: ${reason}`;
  }
  if (result.grade !== null) {
    const lowered = result.loweredByTold ? `: ${LOWERED_BY_TOLD}` : '';
    return [
      `${GRADE_WORDS[result.grade]}${lowered}`,
      ...(standing === null && result.evidence !== null ? [EVIDENCE_WORDS[result.evidence]] : []),
      ...(standing === null ? [] : [standing]),
      ...(found === null ? [] : [found]),
      ...(result.settled ? [] : [sheetWords.findings.open]),
    ].join(' · ');
  }
  if (found !== null && result.measured !== null) return measuredWords.comesTo(found, result.measured.possible);
  // The message of an error stands in full among what was not seen.
  const reason = answer?.kind === 'notSeen' ? answer.reason : undefined;
  return reason === undefined ? BECAUSE_WORDS[result.because] : `${BECAUSE_WORDS[result.because]}: ${reason}`;
}
