import { useState } from 'preact/hooks';
import type { RecordTake } from '../../record/pack-record.ts';
import { inRecordingMs } from '../../sheet/chapters/chapters-of.ts';
import { markTitle } from '../../sheet/chapters/mark-title.ts';
import { takeTitle } from '../../sheet/chapters/take-title.ts';
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
  const marks = take.marks.map((mark) => ({ mark, name: markTitle(mark, titled, take) ?? say.gone }));
  const chosen = marks.find(({ mark }) => typeof asked === 'object' && mark.id === asked?.mark);
  const { endedAtMs, offsetMs = 0 } = take;
  const length = endedAtMs === undefined ? null : formatElapsed(Math.max(0, endedAtMs - take.startedAtMs));

  function change(given: TakeChange, undoLabel: string) {
    setAsked(null);
    void session.put({ puts: [changedTake(take, given)], undoLabel });
  }
  return (
    <details class="fold take" open={open} data-take={take.id}>
      <summary class="line">
        <span>
          <span class="title">{title}</span>
          <span class="fold-hint small muted">
            {length === null ? say.running(title) : say.about(length, marks.length)}
          </span>
        </span>
      </summary>
      <div class="stack">
        <ul class="lines">
          {marks.map(({ mark, name }) => (
            <li key={mark.id}>
              <button type="button" class="line mark-line" onClick={() => setAsked({ mark: mark.id })}>
                <span class="time">{formatElapsed(mark.atMs - take.startedAtMs)}</span>
                <span class="title">{name}</span>
                <span class="side">
                  {offsetMs === 0 ? '' : say.inFilmShort(formatElapsed(inRecordingMs(take, mark.atMs)))}
                </span>
              </button>
            </li>
          ))}
        </ul>
        {marks.length === 0 && <p class="small muted">{say.noMark}</p>}
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
          key={chosen.mark.id}
          take={take}
          mark={chosen.mark}
          title={chosen.name}
          onOffset={(ms) => change({ offsetMs: ms }, say.undo.shifted(title))}
          onTakeOut={() => {
            setAsked(null);
            void session.put({
              puts: [{ subject: 'takeMark', part: `${take.id}/${chosen.mark.id}`, gone: true }],
              undoLabel: say.undo.takenOut(chosen.name),
            });
          }}
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
