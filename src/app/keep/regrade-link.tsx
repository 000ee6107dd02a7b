import { regradeWords as say } from '../../text/regrade.ts';
import { cards } from '../state/bench.ts';

/** The way to re-grading, once there is a pack to be re-graded. */
export function RegradeLink() {
  if (!cards.value.some(({ gone }) => !gone)) return null;
  return (
    <section class="stack">
      <h2>{say.keepTitle}</h2>
      <p class="muted small">{say.keepLead}</p>
      <a class="button" href="#/keep/regrade">
        {say.link}
      </a>
    </section>
  );
}
