import type { Grading, ItemResult } from '../../grading/grading.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { zoneWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Lid } from '../../ui/lid.tsx';
import type { Question } from '../questions.ts';
import { hrefTo } from '../route.ts';

/** One question as a line of a list: its lid, its name, and how it stands. */
export function QuestionLine({
  question,
  record,
  grading,
}: {
  question: Question;
  record: PackRecord;
  grading: Grading;
}) {
  if (question.kind === 'fact') {
    const chosen = question.fact.choices.find(({ id }) => id === record.facts[question.fact.id]);
    return (
      <a class="line" href={hrefTo(record.packId, 'fact', question.fact.id)}>
        <span class="fact-mark">{chosen ? '✓' : '?'}</span>
        <span class="title">{question.fact.ask}</span>
        <span class="side">{chosen?.text ?? zoneWords.open}</span>
      </a>
    );
  }
  const { item } = question;
  const result = grading.items.find(({ itemId }) => itemId === item.id);
  return (
    <a class="line" href={hrefTo(record.packId, 'item', item.id)}>
      <Lid outcome={result?.grade ?? 'notSeen'} widthPx={22} />
      <span>
        <span class="title">{item.title}</span> {item.safety && <span class="tag">{words.safety}</span>}
        {item.stop && <span class="tag">{words.stop}</span>}
      </span>
      <span class="side">{standing(result)}</span>
    </a>
  );
}

function standing(result: ItemResult | undefined): string {
  if (!result) return '';
  if (result.grade !== null) return GRADE_WORDS[result.grade];
  if (result.because === 'notSeen') return zoneWords.notSeen;
  if (result.because === 'doesNotApply' || result.because === 'factExcludes') return zoneWords.doesNotApply;
  return zoneWords.open;
}
