import { words } from '../text/words.ts';

/** Says whether what is on the screen is on the phone. */
export function SavedMark({ now }: { now: 'saved' | 'saving' | 'notSaved' }) {
  if (now === 'notSaved') return <strong class="saved not">{words.notSaved}</strong>;
  return (
    <span class="saved" role="status">
      {now === 'saved' ? `✓ ${words.saved}` : words.saving}
    </span>
  );
}
