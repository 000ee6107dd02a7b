import { Field } from './field.tsx';
import { useDraft } from './use-draft.ts';

interface TextFieldProps {
  id: string;
  label: string;
  value: string;
  /** Called with trimmed text; empty means the field was emptied. */
  onChange: (text: string) => void;
  /** Said when the box is emptied of words that have to be there; they then stay stored. */
  needed?: string;
  maxLength?: number;
  lines?: 'one' | 'many';
  placeholder?: string;
  /** Offered while typing. */
  offers?: readonly string[];
}

export function TextField({
  id,
  label,
  value,
  onChange,
  needed,
  maxLength = 120,
  lines = 'one',
  placeholder,
  offers,
}: TextFieldProps) {
  const draft = useDraft(id, value, (text) => {
    if (problemOf(text) !== null) return true;
    if (text.trim() !== value) onChange(text.trim());
    return true;
  });
  function problemOf(text: string): string | null {
    return (text.trim() === '' && value !== '' && needed) || null;
  }
  const wrong = problemOf(draft.text);
  const shared = {
    id,
    maxLength,
    value: draft.text,
    ...(wrong !== null && { 'aria-invalid': true, 'aria-describedby': `${id}-wrong` }),
    ...(placeholder !== undefined && { placeholder }),
    onBlur: () => draft.onLeave(wrong !== null),
  };
  return (
    <Field id={id} label={label} wrong={wrong}>
      {lines === 'many' ? (
        <textarea {...shared} rows={3} onInput={(event) => draft.onInput(event.currentTarget.value)} />
      ) : (
        <input
          {...shared}
          type="text"
          autocomplete="off"
          {...(offers && { list: `${id}-offers` })}
          onInput={(event) => draft.onInput(event.currentTarget.value)}
        />
      )}
      {offers && (
        <datalist id={`${id}-offers`}>
          {offers.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
    </Field>
  );
}
