import { useEffect, useState } from 'preact/hooks';
import type { PackRecord } from '../../record/pack-record.ts';
import { checklistsWords as say } from '../../text/checklists.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { type ChecklistOnBoard, checklistsOnBoard, offeredOf } from '../state/checklists-on-board.ts';
import { definitionOf } from '../state/definitions.ts';
import type { PackSession } from '../state/pack-session.ts';
import './checklist-choice.css';

/**
 * By which checklist a new pack is looked at. It begins with the usual one, so that most packs cost no tap; until a
 * question of it is answered another can be chosen here, on the first screen of the pack.
 */
export function ChecklistChoice({ session }: { session: PackSession }) {
  const [asking, setAsking] = useState(false);
  const { title, version, status } = session.definition.definition;
  const isFixed = !isUnanswered(session.record.value);
  return (
    <div class="field">
      <span class="label">{say.choice}</span>
      <div class="checklist-choice">
        <p>
          {say.shown(title, version)} {status === 'draft' && <span class="mark">{say.draft}</span>}
        </p>
        {!isFixed && (
          <button type="button" class="button" onClick={() => setAsking(true)}>
            {say.change}
          </button>
        )}
      </div>
      {asking && <ChooseChecklist session={session} onClose={() => setAsking(false)} />}
    </div>
  );
}

function ChooseChecklist({ session, onClose }: { session: PackSession; onClose: () => void }) {
  const [offered, setOffered] = useState<ChecklistOnBoard[]>([]);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    checklistsOnBoard().then(
      (all) => setOffered(offeredOf(all)),
      (error) => {
        console.warn('checklists: not read', error);
        setWrong(say.notRead);
      },
    );
  }, []);

  async function choose({ text }: ChecklistOnBoard) {
    try {
      const { sha256, definition } = await definitionOf(text);
      onClose();
      if (sha256 !== session.definition.sha256) {
        const { id, version } = definition;
        const { carriedFrom } = session.record.value;
        // No undo: it is chosen back in the same place, and a step kept for it could name a checklist removed since.
        await session.put({
          puts: [
            { subject: 'pack', part: 'checklist', v: { id, version, sha256 } },
            ...(carriedFrom === null ? [] : [{ subject: 'pack', part: 'carriedFrom', gone: true as const }]),
          ],
          definition: { sha256, text },
        });
      }
    } catch (error) {
      console.warn('checklist: not chosen', error);
      setWrong(writeProblems.failed);
    }
  }
  return (
    <Dialog title={say.choice} onClose={onClose}>
      <p class="small muted">{say.choiceLead}</p>
      {wrong !== null && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      <div class="stack" role="radiogroup" aria-label={say.choice}>
        {offered.map((one) => (
          // biome-ignore lint/a11y/useSemanticElements: dressed as a button, answers like a radio
          <button
            key={one.sha256}
            type="button"
            class="choice whole"
            role="radio"
            aria-checked={one.sha256 === session.definition.sha256}
            onClick={() => void choose(one)}
          >
            <strong>{say.shown(one.title, one.version)}</strong>
            {one.isDraft && ` · ${say.draft}`} · {say.items(one.itemCount)}
            <br />
            <span class="small">{one.fits}</span>
          </button>
        ))}
      </div>
      <button type="button" class="button" onClick={onClose}>
        {words.cancel}
      </button>
    </Dialog>
  );
}

/** Nothing rests on the checklist yet: no answer, no fact, no state that left something behind. */
function isUnanswered({ answers, facts, state, sheet }: PackRecord): boolean {
  const isEmpty = Object.keys(answers).length === 0 && Object.keys(facts).length === 0;
  return isEmpty && state === null && sheet.now === 'open';
}
