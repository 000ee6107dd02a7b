import { useState } from 'preact/hooks';
import type { RecordTake } from '../../record/pack-record.ts';
import { inRecordingMs } from '../../sheet/chapters/chapters-of.ts';
import { markTitle } from '../../sheet/chapters/mark-title.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
import type { Put } from '../../storage/store.ts';
import { formatElapsed } from '../../text/format-elapsed.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import type { PackSession } from '../state/pack-session.ts';
import { ChapterFiles } from './chapter-files.tsx';
import { MarkDialog } from './mark-dialog.tsx';
import { RenameDialog } from './rename-dialog.tsx';
import { ShiftButtons } from './shift-buttons.tsx';
import { changedTake, removedTake, type TakeChange } from './take-puts.ts';

/** One take: its marks with their times, and once it has ended its name, its offset and its files. */
export function TakePart({ session, take, open }: { session: PackSession; take: RecordTake; open: boolean }) {
  const [asked, setAsked] = useState<{ mark: string } | 'name' | null>(null);
  const record = session.record.value;
  const titled = { record, definition: session.definition.definition, grading: session.grading.value };
  const title = takeTitle(take, record.takes);
  const marks = take.marks.map((mark) => ({
    id: mark.id,
    atMs: mark.atMs,
    name: markTitle(mark, titled, take) ?? say.gone,
    isMark: true,
  }));
  const start = { id: 'start', atMs: take.startedAtMs, name: say.startOfTake, isMark: false };
  const rows = take.endedAtMs === undefined ? marks : [start, ...marks];
  const chosen = rows.find(({ id }) => typeof asked === 'object' && id === asked?.mark);
  const { endedAtMs, offsetMs = 0 } = take;
  const length = endedAtMs === undefined ? null : formatElapsed(Math.max(0, endedAtMs - take.startedAtMs));

  function change(given: TakeChange, undoLabel: string) {
    setAsked(null);
    void session.put({ puts: [changedTake(take, given)], undoLabel });
  }
  function takeOut({ id, name }: { id: string; name: string }) {
    setAsked(null);
    const puts: Put[] = [{ subject: 'takeMark', part: `${take.id}/${id}`, gone: true }];
    void session.put({ puts, undoLabel: say.undo.takenOut(name) });
  }
  return (
    <details class="fold take" open={open} data-take={take.id}>
      <summary class="line">
        <span>
          <span class="title">{title}</span>
          <span class="fold-hint small muted">{say.about(length ?? say.runs, marks.length)}</span>
        </span>
      </summary>
      <div class="stack">
        <ul class="lines">
          {rows.map(({ id, atMs, name, isMark }) => (
            <li key={id} data-mark={isMark}>
              <button type="button" class="line mark-line" onClick={() => setAsked({ mark: id })}>
                <span class="time">{formatElapsed(atMs - take.startedAtMs)}</span>
                <span class="title">{name}</span>
                <span class="side">
                  {offsetMs === 0 ? '' : say.inFilmShort(formatElapsed(inRecordingMs(take, atMs)))}
                </span>
              </button>
            </li>
          ))}
        </ul>
        {marks.length === 0 && endedAtMs !== undefined && <p class="small muted">{say.noMarks}</p>}
        {endedAtMs !== undefined && (
          <>
            <ShiftButtons offsetMs={offsetMs} onShift={(ms) => change({ offsetMs: ms }, say.undo.shifted(title))} />
            <ChapterFiles session={session} take={take} />
            <div class="row">
              <button type="button" class="button quiet" onClick={() => setAsked('name')}>
                {say.rename}
              </button>
              <button
                type="button"
                class="button quiet"
                onClick={() => void session.put({ puts: removedTake(take), undoLabel: say.undo.removed(title) })}
              >
                {say.remove}
              </button>
            </div>
          </>
        )}
      </div>
      {chosen && (
        <MarkDialog
          key={chosen.id}
          take={take}
          atMs={chosen.atMs}
          title={chosen.name}
          onOffset={(ms) => change({ offsetMs: ms }, say.undo.shifted(title))}
          onTakeOut={chosen.isMark ? () => takeOut(chosen) : null}
          onClose={() => setAsked(null)}
        />
      )}
      {asked === 'name' && (
        <RenameDialog
          title={say.renameTitle(title)}
          label={take.label ?? ''}
          onKeep={(label) => change({ label: label === '' ? null : label }, say.undo.renamed(title))}
          onClose={() => setAsked(null)}
        />
      )}
    </details>
  );
}
