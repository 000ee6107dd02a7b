import { useState } from 'preact/hooks';
import { type FinishedReading, finishedReadings, isFinished } from '../../grading/finished-readings.ts';
import { shownItems } from '../../grading/shown-items.ts';
import type { RecordSecondReader } from '../../record/pack-record.ts';
import { agreementWords, secondReaderWords as say } from '../../text/second-reader.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { BeginDialog } from './begin-dialog.tsx';
import { finishReading } from './finish-reading.ts';
import { OwnSavedLine } from './own-saved-line.tsx';

/** The second readings of a pack: begin one, go on with it, finish it, see how it agrees, take it out. */
export function ReadingsPage({ session }: { session: PackSession }) {
  const [beginning, setBeginning] = useState(false);
  const record = session.record.value;
  const graded = { definition: session.definition.definition, record, grading: session.grading.value };
  const shownIds = shownItems(graded.definition, record, graded.grading).map(({ itemId }) => itemId);
  const running = record.secondReaders.findLast((reader) => !isFinished(reader));
  const finished = new Map(finishedReadings(graded).map((reading) => [reading.reader.id, reading]));
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <OwnSavedLine session={session} />
          {shownIds.length > 0 ? (
            <>
              <button
                type="button"
                class={running === undefined ? 'button primary' : 'button'}
                onClick={() => setBeginning(true)}
              >
                {running === undefined ? say.begin : say.beginAnother}
              </button>
              {running && (
                <a class="button primary" href={hrefTo(record.packId, 'second-reader', running.id)}>
                  {say.goOn}
                </a>
              )}
            </>
          ) : (
            <a class="button primary" href={hrefTo(record.packId, 'photos')}>
              {say.toPhotos}
            </a>
          )}
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      <p>{shownIds.length === 0 ? say.noneShown : say.shown(shownIds.length)}</p>
      {record.secondReaders.length === 0 && <p class="muted">{say.none}</p>}
      {record.secondReaders.map((reader, place) => (
        <Reading
          key={reader.id}
          {...{ session, reader, shownIds }}
          number={place + 1}
          finished={finished.get(reader.id) ?? null}
        />
      ))}
      {beginning && <BeginDialog session={session} onClose={() => setBeginning(false)} />}
    </Screen>
  );
}

interface ReadingProps {
  session: PackSession;
  reader: RecordSecondReader;
  number: number;
  shownIds: readonly string[];
  finished: FinishedReading | null;
}

function Reading({ session, reader, number, shownIds, finished }: ReadingProps) {
  const [asking, setAsking] = useState(false);
  const name = say.nameOf(number, reader.label);
  const href = hrefTo(session.packId, 'second-reader', reader.id);
  const done = shownIds.filter((itemId) => reader.answers[itemId] !== undefined).length;
  const open = shownIds.length - done;
  const takeOut = () =>
    void session.put({
      puts: [
        { subject: 'secondReader', part: reader.id, gone: true },
        ...Object.keys(reader.answers).map((itemId) => ({
          subject: 'secondAnswer',
          part: `${reader.id}/${itemId}`,
          gone: true as const,
        })),
      ],
      undoLabel: say.undo.takenOut(name),
    });
  async function finish() {
    setAsking(false);
    if (await finishReading(session, reader)) goTo(href);
  }
  return (
    <div class="card stack">
      <h2>{name}</h2>
      <p>{finished === null ? say.progress(done, shownIds.length) : agreementWords.inOneLine(finished.agreement)}</p>
      <div class="row">
        <button type="button" class="button quiet" onClick={takeOut}>
          {say.takeOut}
        </button>
        {!isFinished(reader) && open > 0 && done > 0 && (
          <button type="button" class="button" onClick={() => setAsking(true)}>
            {say.finishNow}
          </button>
        )}
        <a class="button" href={href}>
          {finished === null ? say.goOn : say.see}
        </a>
      </div>
      {asking && (
        <Dialog title={say.finishNow} onClose={() => setAsking(false)}>
          <p>{say.finishAsk(open)}</p>
          <div class="row">
            <button type="button" class="button quiet" onClick={() => setAsking(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={() => void finish()}>
              {say.finish(open)}
            </button>
          </div>
        </Dialog>
      )}
    </div>
  );
}
