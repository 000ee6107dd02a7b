import type { Grading } from '../../grading/grading.ts';
import { carryOverWords as say } from '../../text/carry-over.ts';
import { formatScore } from '../../text/format-number.ts';
import { verdictWords } from '../../text/verdict.ts';

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
        {verdictWords(grading.verdict).title} · {say.asked(grading.settledCount, grading.askedCount)}
      </span>
    </p>
  );
}
