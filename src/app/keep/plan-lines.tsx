import type { BundlePlan } from '../../storage/bundle/plan-bundle.ts';
import { leftOutLine } from '../../text/bundle.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { keepWords as say } from '../../text/keep.ts';

/** Things that cannot go in, named at once. Our choice: a screenful; the rest is counted. */
const MAX_LISTED = 12;

/** What a bundle will be, before it is saved: how many parts, how big, and what cannot go in. */
export function PlanLines({ plan, savedParts }: { plan: BundlePlan; savedParts: readonly number[] }) {
  const { parts, leftOut } = plan;
  const totalBytes = parts.reduce((sum, { boundBytes }) => sum + boundBytes, 0);
  const more = leftOut.length - MAX_LISTED;
  return (
    <>
      <p>{say.planned(parts.length, formatBytes(totalBytes))}</p>
      {parts.length > 1 && (
        <ul class="small">
          {parts.map(({ part, boundBytes }) => (
            <li key={part}>{say.partState(part, formatBytes(boundBytes), savedParts.includes(part))}</li>
          ))}
        </ul>
      )}
      {leftOut.length > 0 && (
        <div class="notice small">
          <p>{say.leftOut(leftOut.length)}</p>
          <ul class="hash">
            {leftOut.slice(0, MAX_LISTED).map((one) => (
              <li key={one.what}>{leftOutLine(one)}</li>
            ))}
            {more > 0 && <li>{say.moreOfThem(more)}</li>}
          </ul>
        </div>
      )}
    </>
  );
}
