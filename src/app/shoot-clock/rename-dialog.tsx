import { useState } from 'preact/hooks';
import { plainText } from '../../schema/plain-text.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Field } from '../../ui/fields/field.tsx';

interface RenameDialogProps {
  title: string;
  label: string;
  onKeep: (label: string) => void;
  onClose: () => void;
}

/** The name of a take; emptied, it is called by its number. */
export function RenameDialog({ title, label, onKeep, onClose }: RenameDialogProps) {
  const [text, setText] = useState(label);
  return (
    <Dialog title={title} onClose={onClose}>
      <Field id="take-name" label={say.name} wrong={null}>
        <input
          id="take-name"
          type="text"
          autocomplete="off"
          maxLength={MAX_LINE}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </Field>
      <p class="small muted">{say.nameHint}</p>
      <div class="row">
        <button type="button" class="button quiet" onClick={onClose}>
          {say.cancel}
        </button>
        <button type="button" class="button primary" onClick={() => onKeep(plainText(text).trim())}>
          {say.keep}
        </button>
      </div>
    </Dialog>
  );
}
