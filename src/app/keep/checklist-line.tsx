import { checklistsWords as say } from '../../text/checklists.ts';
import { saveFile } from '../save-file.ts';
import type { ChecklistOnBoard } from '../state/checklists-on-board.ts';

interface ChecklistLineProps {
  checklist: ChecklistOnBoard;
  useCount: number;
  /** It has the id and version of one that comes with the app, and other content. */
  otherThanBuiltIn: boolean;
  onRemove: () => void;
}

/** One checklist: what it is, what uses it, its file, and the way off the phone. */
export function ChecklistLine({ checklist, useCount, otherThanBuiltIn, onRemove }: ChecklistLineProps) {
  const { id, version, title, isDraft, itemCount, origin, sha256 } = checklist;
  const facts = [say.items(itemCount), say.origins[origin], say.uses(useCount)];
  return (
    <div class="stack away">
      <div>
        <p>
          <strong>{title === '' ? say.untitled : title}</strong> {isDraft && <span class="mark">{say.draft}</span>}
        </p>
        <p class="small muted">{[`${id} ${version}`, isDraft ? '' : say.released].filter(Boolean).join(' · ')}</p>
        <p class="small muted">{facts.join(' · ')}</p>
        {otherThanBuiltIn && <p class="small">{say.otherThanBuiltIn}</p>}
        <p class="small muted hash">{say.sha256(sha256)}</p>
      </div>
      <div class="row">
        <button
          type="button"
          class="button"
          aria-label={say.of(say.save, id, version)}
          onClick={() => saveFile(new Blob([checklist.text], { type: 'application/json' }), `${id}-${version}.json`)}
        >
          {say.save}
        </button>
        {origin !== 'builtIn' && (
          <button type="button" class="button quiet" aria-label={say.of(say.remove, id, version)} onClick={onRemove}>
            {say.remove}
          </button>
        )}
      </div>
    </div>
  );
}
