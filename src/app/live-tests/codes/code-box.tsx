import { fieldWords } from '../../../text/fields.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';
import { Field } from '../../../ui/fields/field.tsx';
import { useDraft } from '../../../ui/fields/use-draft.ts';

/** As many as an entry holds. */
export const LONGEST_CODE = 200;

interface CodeBoxProps {
  owner: string;
  /** Empty where nothing is stored. */
  value: string;
  onChange: (text: string) => void;
}

/** The code as printed. The phone corrects nothing in it; a stored one cannot be emptied. */
export function CodeBox({ owner, value, onChange }: CodeBoxProps) {
  const wrongIn = (text: string) => (text.trim() === '' && value !== '' ? fieldWords.stillNeeded : null);
  const draft = useDraft(`${owner}/code`, value, (text) => {
    if (wrongIn(text) !== null) return false;
    if (text.trim() !== value) onChange(text.trim());
    return true;
  });
  const wrong = wrongIn(draft.text);
  return (
    <Field id="code-text" label={say.labels.text} wrong={wrong}>
      <textarea
        id="code-text"
        class="code-text"
        rows={2}
        maxLength={LONGEST_CODE}
        autocomplete="off"
        autocapitalize="characters"
        autocorrect="off"
        spellcheck={false}
        value={draft.text}
        aria-invalid={wrong !== null}
        onInput={(event) => draft.onInput(event.currentTarget.value)}
        onBlur={() => draft.onLeave(wrong !== null)}
      />
    </Field>
  );
}
