import { words } from '../../text/words.ts';
import { SavedMark } from '../../ui/saved-mark.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { NotSaved } from './not-saved.tsx';

/** Above the dock: whether the last change is saved, what it was, and the way to take it back. Keeps its height. */
export function SavedLine({ session }: { session: PackSession }) {
  const saving = session.saving.value;
  const label = session.undoLabel.value;
  const takenBack = session.takenBack.value;
  return (
    <div class="saved-line">
      <NotSaved session={session} />
      <SavedMark now={saving.now} />
      <span class="saved-what" role="status">
        {takenBack === null ? (label ?? '') : words.takenBack(takenBack)}
      </span>
      <button type="button" class="button quiet" disabled={label === null} onClick={() => void session.undo()}>
        {words.undo}
      </button>
    </div>
  );
}
