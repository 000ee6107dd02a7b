import { plainText } from '../../schema/plain-text.ts';
import { Field } from './field.tsx';
import { useDraft } from './use-draft.ts';

interface TextFieldProps {
  id: string;
  label: string;
  value: string;
  /** Called with plain, trimmed text, as it will be stored; empty means the field was emptied. */
  onChange: (text: string) => void;
  /** Says what is wrong with the text, or null. What is wrong stays in the box and changes nothing stored. */
  check?: (text: string) => string | null;
  /** Whose box it is, where `check` may refuse: what could not be stored waits for that owner only. */
  owner?: string;
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
  check,
  owner,
  maxLength = 120,
  lines = 'one',
  placeholder,
  offers,
}: TextFieldProps) {
  const draft = useDraft(owner === undefined ? id : `${owner}/${id}`, value, (text) => {
    const given = plainText(text).trim();
    if (check?.(given)) return false;
    if (given !== value) onChange(given);
    return true;
  });
  const wrong = check?.(plainText(draft.text).trim()) ?? null;
  const shared = {
    id,
    maxLength,
    value: draft.text,
    ...(wrong !== null && { 'aria-invalid': true, 'aria-describedby': `${id}-wrong` }),
    ...(placeholder !== undefined && { placeholder }),
    onBlur: () => draft.onLeave(wrong !== null),
  };
  return (
    <Field id={id} label={label} wrong={wrong} elsewhere={draft.elsewhere}>
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
