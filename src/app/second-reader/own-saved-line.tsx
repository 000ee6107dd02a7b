import { secondReaderWords as say } from '../../text/second-reader.ts';
import { SavedMark } from '../../ui/saved-mark.tsx';
import { NotSaved } from '../parts/not-saved.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import type { PackSession } from '../state/pack-session.ts';

/** What was saved, and the way to take it back, if it is of a second reading: an answer of the first must not show here. */
export function OwnSavedLine({ session }: { session: PackSession }) {
  const label = session.undoLabel.value;
  if (label?.startsWith(say.undo.begins)) return <SavedLine session={session} />;
  return (
    <div class="saved-line">
      <NotSaved session={session} />
      <SavedMark now={session.saving.value.now} />
    </div>
  );
}
