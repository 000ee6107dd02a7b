import { fieldWords } from '../../text/fields.ts';
import { Field } from './field.tsx';
import { readNumber } from './read-number.ts';
import { useDraft } from './use-draft.ts';

interface NumberFieldProps {
  id: string;
  /** Whose box it is, e.g. the pack's id: what could not be stored waits for that owner only. */
  owner: string;
  label: string;
  unit: string;
  /** In the unit shown; null when not filled in. */
  value: number | null;
  onChange: (value: number | null) => void;
  /** Says what is wrong with a number that can be read, or null. */
  check?: (value: number) => string | null;
  /** Said when the box is emptied of a figure that has to be there; the figure then stays stored. */
  needed?: string;
  whole?: boolean;
  /** May be below zero: then the phone's keyboard must have a minus. */
  signed?: boolean;
  /** Digits that matter of a converted value; what was typed in this unit keeps all. */
  significantDigits?: number;
}

/** A number with its unit. What cannot be read stays in the box, with a sentence below, and changes nothing stored. */
export function NumberField({ id, owner, label, unit, value, onChange, check, needed, ...rest }: NumberFieldProps) {
  const { whole, signed, significantDigits = 12 } = rest;
  const stored = value === null ? '' : String(Number(value.toPrecision(significantDigits)));
  const draft = useDraft(`${owner}/${id}`, stored, (text) => {
    const found = readNumber(text);
    if (found === null || problemOf(text) !== null) return false;
    if (found === 'empty') {
      if (value !== null) onChange(null);
    } else if (String(found) !== stored) onChange(found);
    return true;
  });

  function problemOf(text: string): string | null {
    const found = readNumber(text);
    if (found === 'empty') return (value !== null && needed) || null;
    if (found === null) return fieldWords.notANumber(text.trim());
    if (whole && !Number.isInteger(found)) return fieldWords.notWhole;
    return check?.(found) ?? null;
  }
  const wrong = problemOf(draft.text);
  return (
    <Field id={id} label={label} wrong={wrong} elsewhere={draft.elsewhere}>
      <input
        id={id}
        type="text"
        inputMode={signed ? 'text' : whole ? 'numeric' : 'decimal'}
        autocomplete="off"
        value={draft.text}
        aria-invalid={wrong !== null}
        {...(wrong !== null && { 'aria-describedby': `${id}-wrong` })}
        onInput={(event) => draft.onInput(event.currentTarget.value)}
        onBlur={() => draft.onLeave(wrong !== null)}
      />
      {unit !== '' && <span class="unit">{unit}</span>}
    </Field>
  );
}
