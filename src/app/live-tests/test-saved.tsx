import { editingWords as say } from '../../text/live-tests/editing.ts';
import { NotSaved } from '../parts/not-saved.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import type { PackSession } from '../state/pack-session.ts';

/** Above the dock: that the test is saved, or what it still needs before it can be. As high as the saved line. */
export function TestSaved({ session, missing }: { session: PackSession; missing: readonly string[] }) {
  if (missing.length === 0) return <SavedLine session={session} />;
  return (
    <>
      <NotSaved session={session} />
      <p class="saved-line test-missing small" role="status">
        {say.stillMissing(missing.join(', '))}
      </p>
    </>
  );
}
