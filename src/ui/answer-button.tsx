import type { Grade } from '../schema/grade.ts';
import { GRADE_WORDS } from '../text/grades.ts';
import { Lid } from './lid.tsx';

interface AnswerButtonProps {
  grade: Grade;
  sentence: string;
  chosen: boolean;
  onChoose: () => void;
}

/** One answer: the observable sentence large, the grade word small beside its lid. */
export function AnswerButton({ grade, sentence, chosen, onChoose }: AnswerButtonProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a radio input cannot hold a sentence, a glyph and a word
    <button type="button" class="answer" role="radio" aria-checked={chosen} data-grade={grade} onClick={onChoose}>
      <Lid outcome={grade} />
      <span>
        <span class="sentence">{sentence}</span>
        <span class="word">{GRADE_WORDS[grade]}</span>
      </span>
    </button>
  );
}
