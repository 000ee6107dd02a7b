import { useEffect } from 'preact/hooks';
import { words, writeProblems } from '../../text/words.ts';
import { keepAgain, notKept } from '../state/kept.ts';
import type { PackSession } from '../state/pack-session.ts';
import { saidOnScreen } from '../state/unsaved-sessions.ts';
import { unsavedLines } from '../unsaved-lines.ts';

/** What is on the screen and not on the phone, why, and the way to try again. Nothing while all is saved. */
export function NotSaved({ session }: { session: PackSession }) {
  useEffect(() => {
    saidOnScreen.value += 1;
    return () => {
      saidOnScreen.value -= 1;
    };
  }, []);
  const saving = session.saving.value;
  const drafts = notKept.value;
  if (saving.now !== 'notSaved' && drafts === null) return null;
  const problem = saving.now === 'notSaved' ? saving.problem : drafts;
  const names = unsavedLines(session.unsaved.map(({ undoLabel, puts }) => ({ puts, ...(undoLabel && { undoLabel }) })));
  return (
    <div class="notice not-saved stack" role="alert">
      {saving.now === 'notSaved' && names.length > 0 && <p>{words.notSavedWhat(names)}</p>}
      {drafts !== null && <p>{words.draftsNotKept}</p>}
      {problem && <p class="small">{writeProblems[problem]}</p>}
      <button
        type="button"
        class="button"
        onClick={() => {
          void session.flush();
          void keepAgain();
        }}
      >
        {words.tryAgain}
      </button>
    </div>
  );
}
