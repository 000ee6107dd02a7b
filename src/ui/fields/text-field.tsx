import { Field } from './field.tsx';
import { useDraft } from './use-draft.ts';

interface TextFieldProps {
  id: string;
  label: string;
  value: string;
  /** Called with trimmed text; empty means the field was emptied. */
  onChange: (text: string) => void;
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
  maxLength = 120,
  lines = 'one',
  placeholder,
  offers,
}: TextFieldProps) {
  const draft = useDraft(id, value, (text) => {
    if (text.trim() !== value) onChange(text.trim());
    return true;
  });
  const shared = {
    id,
    maxLength,
    value: draft.text,
    ...(placeholder !== undefined && { placeholder }),
    onBlur: () => draft.onLeave(false),
  };
  return (
    <Field id={id} label={label} wrong={null}>
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
