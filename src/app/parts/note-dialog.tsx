import { useState } from 'preact/hooks';
import { MAX_NOTE } from '../../schema/text-limits.ts';
import { fieldWords } from '../../text/fields.ts';
import { itemWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';

/** A note in the tester's own words. Closing it by any way but Cancel keeps what was typed. */
export function NoteDialog({
  note,
  onKeep,
  onClose,
}: {
  note: string;
  onKeep: (text: string) => void;
  onClose: () => void;
}) {
  const [text, setText] = useState(note);
  const [before] = useState(note);
  return (
    <Dialog title={itemWords.noteTitle} onClose={() => (text.trim() === before ? onClose() : onKeep(text.trim()))}>
      <div class="field">
        <label for="note">{itemWords.noteHint}</label>
        <div class="box">
          <textarea
            id="note"
            rows={5}
            maxLength={MAX_NOTE}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </div>
      </div>
      {note !== before && (
        <p class="small" role="status">
          {fieldWords.elsewhere(note)}
        </p>
      )}
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" onClick={() => onKeep(text.trim())}>
          {itemWords.keepNote}
        </button>
      </div>
    </Dialog>
  );
}
