import { useState } from 'preact/hooks';
import type { RecordTake } from '../../record/pack-record.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
import { formatMoment } from '../../text/format-day.ts';
import { formatElapsed } from '../../text/format-elapsed.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';
import { ElapsedField, whyNotElapsed } from './elapsed-field.tsx';
import { readElapsedMs } from './read-elapsed.ts';
import { changedTake } from './take-puts.ts';

const DAY_MS = 86_400_000;

/** A take that was left running: asks when it ended. */
export function ForgottenTake({ session, take }: { session: PackSession; take: RecordTake }) {
  const [text, setText] = useState('');
  const title = takeTitle(take, session.record.value.takes);
  const last = take.marks.at(-1);
  const lastMs = last === undefined ? 0 : last.atMs - take.startedAtMs;
  const check = (elapsedMs: number) => {
    if (elapsedMs > DAY_MS) return say.atMostDay;
    // Typed to the second, the mark stands to the millisecond.
    return elapsedMs + 999 < lastMs ? say.beforeLastMark(formatElapsed(lastMs)) : null;
  };
  const elapsedMs = whyNotElapsed(text, check) === null ? readElapsedMs(text) : null;
  const endAfter = (ms: number) =>
    void session.put({
      puts: [changedTake(take, { endedAtMs: take.startedAtMs + Math.max(ms, lastMs) })],
      undoLabel: say.undo.ended(title),
    });
  return (
    <section class="notice stack">
      <h2>{title}</h2>
      <p>{say.forgottenLead(formatMoment(take.startedAtMs, utcOffsetMinutes(take.startedAtMs)))}</p>
      {last !== undefined && (
        <button type="button" class="button" onClick={() => endAfter(lastMs)}>
          {say.endedAtLastMark(formatElapsed(lastMs))}
        </button>
      )}
      <ElapsedField
        id={`ran-${take.id}`}
        label={say.endedAfter}
        hint={say.endedAfterHint}
        text={text}
        onText={setText}
        check={check}
      />
      <button
        type="button"
        class="button"
        disabled={elapsedMs === null}
        onClick={() => elapsedMs !== null && endAfter(elapsedMs)}
      >
        {say.endIt}
      </button>
    </section>
  );
}
