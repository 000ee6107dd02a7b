import type { ItemResult } from '../../grading/grading.ts';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import { EVIDENCE, type Evidence, GRADES, type Grade } from '../../schema/grade.ts';
import { itemWords } from '../../text/item.ts';
import { AnswerButton } from '../../ui/answer-button.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import type { ItemOver } from './item-overlays.tsx';

interface ItemChoicesProps {
  item: Item;
  answer: Answer | undefined;
  result: ItemResult | undefined;
  /** The grade that counts, if there is one. */
  chosen: Grade | null;
  evidence: Evidence | null;
  onGrade: (grade: Grade) => void;
  onEvidence: (evidence: Evidence) => void;
  onOver: (over: ItemOver) => void;
}

/** The sentences of an item as big choices, the ways not to grade it, and how it is known. */
export function ItemChoices({ item, answer, result, chosen, evidence, onGrade, onEvidence, onOver }: ItemChoicesProps) {
  // What the live tests measured applies.
  const isTested = item.derive !== undefined && (result?.measured ?? null) !== null;
  return (
    <>
      <p class="push small muted">{itemWords.worstCounts}</p>
      <div class="answers" role="radiogroup" aria-label={item.ask}>
        {GRADES.flatMap((grade) => {
          const sentence = item.grades[grade];
          return sentence === undefined
            ? []
            : [
                <AnswerButton
                  key={grade}
                  grade={grade}
                  sentence={sentence}
                  chosen={chosen === grade}
                  onChoose={() => onGrade(grade)}
                />,
              ];
        })}
      </div>
      <div class="row">
        <button
          type="button"
          class="choice"
          aria-pressed={answer?.kind === 'notSeen'}
          onClick={() => onOver('notSeen')}
        >
          {itemWords.notSeen}
        </button>
        {item.mayNotApply.length > 0 && !isTested && (
          <button
            type="button"
            class="choice"
            aria-pressed={answer?.kind === 'doesNotApply'}
            onClick={() => onOver('doesNotApply')}
          >
            {itemWords.doesNotApply}
          </button>
        )}
        <button type="button" class="choice" onClick={() => onOver('why')}>
          {itemWords.whyItMatters}
        </button>
      </div>
      {result?.because !== 'measured' && (
        <ChoiceField
          label={itemWords.how}
          choices={EVIDENCE.map((id) => ({ id, text: itemWords.evidence[id] }))}
          chosen={evidence}
          onChoose={onEvidence}
        />
      )}
      <p class="small slot" role="status">
        {said(answer, result)}
      </p>
    </>
  );
}

/** One line below the answers, always there so that nothing moves: why it is not graded, or what became of the grade. */
function said(answer: Answer | undefined, result: ItemResult | undefined): string {
  if (answer?.kind === 'notSeen' || answer?.kind === 'doesNotApply') return answer.reason;
  if (result?.loweredByTold) return itemWords.toldSafety;
  return answer?.kind === 'grade' && answer.unlooked ? itemWords.unlooked : '';
}
