import type { Grading } from '../../grading/grading.ts';
import { carryOverWords as say } from '../../text/carry-over.ts';
import { formatScore } from '../../text/format-number.ts';
import { VERDICT_WORDS } from '../../text/verdict.ts';

/** Score, verdict and how far it is, by one version of the checklist. */
export function ScoreBy({ version, grading }: { version: string; grading: Grading }) {
  const score = grading.score === null ? say.withheld : formatScore(grading.score, grading.settled);
  return (
    <p>
      <strong>
        {say.by(version)}: {score}
      </strong>
      <br />
      <span class="small muted">
        {verdictOf(grading.verdict)} · {say.asked(grading.settledCount, grading.askedCount)}
      </span>
    </p>
  );
}

/** Both ends while it is unsettled: a score may move and the verdict with it. */
function verdictOf({ low, high }: Grading['verdict']): string {
  const [worst, best] = [VERDICT_WORDS[low].title, VERDICT_WORDS[high].title];
  return low === high ? worst : say.unsettled(worst, best);
}
