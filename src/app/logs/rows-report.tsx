import type { LogSummary } from '../../logs/log-messages.ts';
import { formatFixed } from '../../text/format-number.ts';
import { logWords } from '../../text/logs/log.ts';
import { rowWords as say } from '../../text/logs/mapping.ts';

/** Our choice: enough to see what kind of rows they are. */
const LISTED = 50;

/** What became of every row: nothing is dropped in silence. */
export function RowsReport({ summary }: { summary: LogSummary }) {
  const { counts, rejected, stretches } = summary;
  const said = (count: number, words: (count: string) => string) => (count > 0 ? [words(formatFixed(count, 0))] : []);
  const more = counts.rejected - Math.min(rejected.length, LISTED);
  return (
    <section class="stack">
      <p class="small">
        {logWords.facts([
          say.read(formatFixed(counts.rowsRead, 0)),
          ...(counts.merged + counts.rejected === 0 ? [say.allRead] : []),
          ...said(counts.merged, say.merged),
          ...said(counts.rejected, say.rejected),
          ...said(counts.filled, say.filled),
          ...said(counts.temperaturesLeftOut, say.temperatures),
          ...said(counts.midnights, say.midnights),
          ...(stretches.length > 1 ? [say.parts(formatFixed(stretches.length, 0))] : []),
        ])}
      </p>
      {rejected.length > 0 && (
        <details class="small">
          <summary class="log-summary">{say.which}</summary>
          <ul>
            {rejected.slice(0, LISTED).map(({ line, reason }) => (
              <li key={line}>{say.lineOf(line, say.reasons[reason])}</li>
            ))}
            {more > 0 && <li>{say.more(formatFixed(more, 0))}</li>}
          </ul>
        </details>
      )}
    </section>
  );
}
