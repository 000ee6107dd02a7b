import { useState } from 'preact/hooks';
import type { RecordTake } from '../../record/pack-record.ts';
import { plainText } from '../../schema/plain-text.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
import { randomId } from '../../storage/open-store.ts';
import { markWords, shootClockWords as say } from '../../text/shoot-clock.ts';
import { Field } from '../../ui/fields/field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { nowMs } from '../clock.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { ForgottenTake } from './forgotten-take.tsx';
import { RunningClock } from './running-clock.tsx';
import { isForgotten, openTake } from './take-marks.ts';
import { TakePart } from './take-part.tsx';
import { changedTake } from './take-puts.ts';
import './shoot-clock.css';

/** The clock that ties findings to a video: starts and ends takes, marks moments, corrects times, gives chapters. */
export function ShootClockPage({ session }: { session: PackSession }) {
  const [label, setLabel] = useState('');
  const record = session.record.value;
  const { takes } = record;
  const open = openTake(record);
  const running = open !== null && !isForgotten(open, nowMs.value) ? open : null;
  const forgotten = takes.filter((take) => take.endedAtMs === undefined && take !== running);
  const listed = takes.filter((take) => !forgotten.includes(take)).reverse();

  const begin = () => {
    const v = { startedAtMs: Date.now(), made: null };
    const title = markWords.take(takes.length + 1);
    void session.put({ puts: [{ subject: 'take', part: randomId(), v }], undoLabel: say.undo.started(title) });
  };
  function mark(take: RecordTake) {
    const atMs = Math.max(Date.now(), take.startedAtMs);
    const word = plainText(label).trim();
    const v = { kind: 'word', atMs, ...(word !== '' && { label: word }) };
    setLabel('');
    void session.put({
      puts: [{ subject: 'takeMark', part: `${take.id}/${randomId()}`, v }],
      undoLabel: say.undo.marked(word === '' ? say.unnamed : word),
    });
  }
  function end(take: RecordTake) {
    const lastMs = take.marks.at(-1)?.atMs ?? take.startedAtMs;
    void session.put({
      puts: [changedTake(take, { endedAtMs: Math.max(Date.now(), lastMs) })],
      undoLabel: say.undo.ended(takeTitle(take, takes)),
    });
  }
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          {running === null ? (
            <button type="button" class="button primary" onClick={begin}>
              {say.startNext(takes.length + 1)}
            </button>
          ) : (
            <>
              <button type="button" class="button" onClick={() => end(running)}>
                {say.end}
              </button>
              <button type="button" class="button primary" onClick={() => mark(running)}>
                {say.markNow}
              </button>
            </>
          )}
        </>
      }
    >
      {forgotten.map((take) => (
        <ForgottenTake key={take.id} session={session} take={take} />
      ))}
      <RunningClock session={session} take={running} />
      {running !== null && (
        <Field id="mark-label" label={say.label} wrong={null}>
          <input
            id="mark-label"
            type="text"
            autocomplete="off"
            maxLength={MAX_LINE}
            value={label}
            onInput={(event) => setLabel(event.currentTarget.value)}
          />
        </Field>
      )}
      {takes.length === 0 && <p class="muted">{say.lead}</p>}
      {listed.length > 0 && (
        <section class="stack">
          <h2>{say.takes}</h2>
          <div class="folds">
            {listed.map((take, place) => (
              <TakePart key={take.id} session={session} take={take} open={place === 0} />
            ))}
          </div>
        </section>
      )}
    </Screen>
  );
}
