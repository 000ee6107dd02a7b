import { takeTitle } from '../../sheet/chapters/take-title.ts';
import { formatRunning } from '../../text/format-elapsed.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isForgotten, openTake } from './take-marks.ts';
import { useNow } from './use-now.ts';
import './take-line.css';

/** Under the head of every screen of a pack while a take runs: that the camera is on, and the way to the clock. */
export function TakeLine({ session }: { session: PackSession }) {
  const record = session.record.value;
  const take = openTake(record);
  const nowMs = useNow(take?.startedAtMs ?? null);
  if (take === null) return null;
  const title = takeTitle(take, record.takes);
  const forgotten = isForgotten(take, nowMs);
  return (
    <p class="take-line" role="note">
      <a href={hrefTo(session.packId, 'shoot-clock')}>
        <span class="take-line-what">{forgotten ? say.forgotten(title) : say.running(title)}</span>
        {!forgotten && <span aria-hidden="true">{formatRunning(Math.max(0, nowMs - take.startedAtMs))}</span>}
      </a>
    </p>
  );
}
