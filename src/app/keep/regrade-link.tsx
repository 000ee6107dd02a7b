import { regradeWords as say } from '../../text/regrade.ts';
import { cards } from '../state/bench.ts';

/** The way to re-grading, once there is a pack to be re-graded. */
export function RegradeLink() {
  if (!cards.value.some(({ gone }) => !gone)) return null;
  return (
    <a class="line way" href="#/keep/regrade">
      <span>
        <h2>{say.link}</h2>
        <span class="small muted fold-hint">{say.keepLead}</span>
      </span>
      <span aria-hidden="true">›</span>
    </a>
  );
}
