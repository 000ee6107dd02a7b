import { words } from '../text/words.ts';

/** Says whether what is on the screen is on the phone. */
export function SavedMark({ now, onRetry }: { now: 'saved' | 'saving' | 'notSaved'; onRetry: () => void }) {
  if (now === 'notSaved') {
    return (
      <button type="button" class="smoke" onClick={onRetry}>
        {words.notSaved}
      </button>
    );
  }
  return (
    <span class="saved" role="status">
      {now === 'saved' ? `✓ ${words.saved}` : words.saving}
    </span>
  );
}
