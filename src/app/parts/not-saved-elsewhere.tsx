import { words, writeProblems } from '../../text/words.ts';
import { route } from '../route.ts';
import { notSavedSessions, saidOnScreen, saveAgain } from '../state/unsaved-sessions.ts';

/**
 * Above a screen that does not say it itself (the Bench, Keep, another pack, a pack put away): the packs of which
 * something is not saved yet, and the way to try again.
 */
export function NotSavedElsewhere() {
  const here = route.value;
  const packId = here.screen === 'pack' ? here.packId : null;
  const isSaid = saidOnScreen.value > 0;
  const others = notSavedSessions.value.filter((session) => session.packId !== packId || !isSaid);
  const [first] = others;
  const saving = first?.saving.value;
  if (first === undefined || saving?.now !== 'notSaved') return null;
  const names = others.map(({ record }) => {
    const { name, sample } = record.value.nameplate;
    return words.packLabel(name ?? '', sample ?? '');
  });
  return (
    <div class="notice not-saved elsewhere stack" role="alert">
      <p>{words.notSavedOf(names)}</p>
      <p class="small">{writeProblems[saving.problem]}</p>
      <button type="button" class="button" onClick={() => void saveAgain()}>
        {words.tryAgain}
      </button>
    </div>
  );
}
