import { type Asking, type Question, questionId } from '../questions.ts';
import { QuestionLine } from './question-line.tsx';

/** Questions as lines that lead to them. */
export function QuestionList({ asking, questions }: { asking: Asking; questions: Question[] }) {
  return (
    <ul class="lines">
      {questions.map((question) => (
        <li key={questionId(question)}>
          <QuestionLine question={question} record={asking.record} grading={asking.grading} />
        </li>
      ))}
    </ul>
  );
}
