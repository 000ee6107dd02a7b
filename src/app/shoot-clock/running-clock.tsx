import type { RecordTake } from '../../record/pack-record.ts';
import { markTitle } from '../../sheet/chapters/mark-title.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
import { formatClock } from '../../text/format-day.ts';
import { formatElapsed, formatRunning } from '../../text/format-elapsed.ts';
import { markWords, shootClockWords as say } from '../../text/shoot-clock.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';
import { useNow } from './use-now.ts';

const HOUR_MS = 3_600_000;

/** The time of the running take, large; at rest, what to do before the next one. */
export function RunningClock({ session, take }: { session: PackSession; take: RecordTake | null }) {
  const record = session.record.value;
  const nowMs = useNow(take?.startedAtMs ?? null);
  if (take === null) {
    return (
      <section class="shoot-clock">
        <h2>{markWords.take(record.takes.length + 1)}</h2>
        <p class="shoot-clock-time rests" aria-hidden="true">
          {formatRunning(0)}
        </p>
        <p class="shoot-clock-words small muted">{say.clap(markWords.take(record.takes.length + 1))}</p>
      </section>
    );
  }
  const elapsedMs = Math.max(0, nowMs - take.startedAtMs);
  return (
    <section class="shoot-clock">
      <h2>{takeTitle(take, record.takes)}</h2>
      <p
        class={elapsedMs < HOUR_MS ? 'shoot-clock-time' : 'shoot-clock-time long'}
        role="timer"
        aria-label={say.time}
        data-started={take.startedAtMs}
      >
        {formatRunning(elapsedMs)}
      </p>
      <div class="shoot-clock-words small muted">
        <p>{say.runsSince(formatClock(take.startedAtMs, utcOffsetMinutes(take.startedAtMs)))}</p>
        <p class="shoot-clock-last" role="status">
          {lastMark(session, take)}
        </p>
      </div>
    </section>
  );
}

function lastMark(session: PackSession, take: RecordTake): string {
  const mark = take.marks.at(-1);
  if (mark === undefined) return say.noMark;
  const { definition } = session.definition;
  const titled = { record: session.record.value, definition, grading: session.grading.value };
  return say.lastMark(formatElapsed(mark.atMs - take.startedAtMs), markTitle(mark, titled, take) ?? say.gone);
}
