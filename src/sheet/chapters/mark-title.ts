import type { Grading } from '../../grading/grading.ts';
import type { PackRecord, RecordTake } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';
import { GRADE_WORDS, NOT_SEEN_WORD, OUTCOME_WORDS } from '../../text/grades.ts';
import { markWords as say } from '../../text/shoot-clock.ts';
import { testTitle } from './test-title.ts';

export interface Titled {
  record: Pick<PackRecord, 'answers' | 'photos' | 'tests' | 'takes'>;
  definition: Checklist;
  grading: Grading;
}

/**
 * What a mark is called now: "Cell vents: weak", "Photo 7", "Over-current trip: 150 A", or the tester's own word. Null
 * where what it marked is no longer in the record.
 */
export function markTitle(mark: RecordTake['marks'][number], titled: Titled, take: RecordTake): string | null {
  if (mark.kind === 'word') return mark.label ?? say.own(ownNumber(mark.id, take));
  if (mark.kind === 'answer') return answerTitle(mark.part, titled);
  if (mark.kind === 'test') return testTitle(mark, titled.record.tests);
  const place = titled.record.photos.findIndex(({ id }) => id === mark.part);
  return place === -1 ? null : say.photo(place + 1);
}

function answerTitle(itemId: string, { record, definition, grading }: Titled): string | null {
  const item = definition.items.find(({ id }) => id === itemId);
  if (!item || !Object.hasOwn(record.answers, itemId)) return null;
  const { kind } = record.answers[itemId] ?? {};
  if (kind === 'notSeen') return say.answer(item.title, NOT_SEEN_WORD);
  if (kind === 'doesNotApply') return say.answer(item.title, OUTCOME_WORDS.doesNotApply);
  const grade = grading.items.find((result) => result.itemId === itemId)?.grade ?? null;
  return grade === null ? item.title : say.answer(item.title, GRADE_WORDS[grade]);
}

/** Counted among the marks of the tester's own that have no label. */
function ownNumber(markId: string, { marks }: RecordTake): number {
  return (
    marks.filter(({ kind, ...mark }) => kind === 'word' && !('label' in mark)).findIndex(({ id }) => id === markId) + 1
  );
}
