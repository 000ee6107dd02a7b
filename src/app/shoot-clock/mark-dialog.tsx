import { useState } from 'preact/hooks';
import type { RecordTake } from '../../record/pack-record.ts';
import { inRecordingMs } from '../../sheet/chapters/chapters-of.ts';
import { formatElapsed } from '../../text/format-elapsed.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { ElapsedField, whyNotElapsed } from './elapsed-field.tsx';
import { isStorableOffset, offsetByMark } from './offset.ts';
import { readElapsedMs } from './read-elapsed.ts';

interface MarkDialogProps {
  take: RecordTake;
  /** On the phone's clock. */
  atMs: number;
  title: string;
  onOffset: (offsetMs: number) => void;
  /** Null for the start of the take, which is no mark. */
  onTakeOut: (() => void) | null;
  onClose: () => void;
}

/** One mark: where it really is in the recording, by which all times of the take are set; or out with it. */
export function MarkDialog({ take, atMs, title, onOffset, onTakeOut, onClose }: MarkDialogProps) {
  const [text, setText] = useState('');
  const check = (elapsedMs: number) => (isStorableOffset(offsetByMark(take, atMs, elapsedMs)) ? null : say.tooFar);
  const elapsedMs = whyNotElapsed(text, check) === null ? readElapsedMs(text) : null;
  return (
    <Dialog title={say.markAt(title, formatElapsed(atMs - take.startedAtMs))} onClose={onClose}>
      {take.endedAtMs !== undefined && (
        <>
          <p class="small muted">{say.setByMarkLead}</p>
          <ElapsedField
            id="in-film"
            label={say.inFilm}
            hint={formatElapsed(Math.max(0, inRecordingMs(take, atMs)))}
            text={text}
            onText={setText}
            check={check}
          />
          <p class="small muted">{say.inFilmHint}</p>
          <button
            type="button"
            class="button primary"
            disabled={elapsedMs === null}
            onClick={() => elapsedMs !== null && onOffset(offsetByMark(take, atMs, elapsedMs))}
          >
            {say.setByMark}
          </button>
        </>
      )}
      {onTakeOut && (
        <button type="button" class="button" onClick={onTakeOut}>
          {say.takeOut}
        </button>
      )}
      <button type="button" class="button quiet" onClick={onClose}>
        {say.cancel}
      </button>
    </Dialog>
  );
}
