import { closingWords as say } from '../../text/closing-screens.ts';
import { formatMoment } from '../../text/format-day.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** The revisions of a sheet, the newest first, each to be looked at. `shown` is the one on the screen. */
export function RevisionsPart({ session, shown }: { session: PackSession; shown: string | null }) {
  const { closings } = session.record.value;
  if (closings.length === 0) return null;
  return (
    <section class="stack">
      <h2>{say.revisions}</h2>
      <ul class="lines">
        {closings.toReversed().map(({ sha256, revision, closedAtMs, reason }) => (
          <li key={sha256}>
            <a
              class="line"
              {...(sha256 === shown ? { 'aria-current': 'true' } : { href: hrefTo(session.packId, 'sheet', sha256) })}
            >
              <span class="fact-mark">{sha256 === shown ? '✓' : ''}</span>
              <span>
                <span class="title">{say.revision(revision)}</span>
                <br />
                <span class="small muted">
                  {formatMoment(closedAtMs, utcOffsetMinutes(closedAtMs))}
                  {reason !== undefined && ` · ${reason}`}
                </span>
              </span>
              <span class="side">{sha256 === shown ? say.now : say.look}</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
