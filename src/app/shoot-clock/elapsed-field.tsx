import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { Field } from '../../ui/fields/field.tsx';
import { readElapsedMs } from './read-elapsed.ts';

interface ElapsedFieldProps {
  id: string;
  label: string;
  hint: string;
  text: string;
  onText: (text: string) => void;
  /** What is wrong with a time that can be read, or null. */
  check: (elapsedMs: number) => string | null;
}

/** A box for a time since a start. What cannot be read stays in it, with a sentence below. */
export function ElapsedField({ id, label, hint, text, onText, check }: ElapsedFieldProps) {
  const wrong = whyNotElapsed(text, check);
  return (
    <Field id={id} label={label} wrong={wrong}>
      <input
        id={id}
        type="text"
        autocomplete="off"
        placeholder={hint}
        value={text}
        aria-invalid={wrong !== null}
        {...(wrong !== null && { 'aria-describedby': `${id}-wrong` })}
        onInput={(event) => onText(event.currentTarget.value)}
      />
    </Field>
  );
}

/** Null of an empty box, and of a time that can be taken. */
export function whyNotElapsed(text: string, check: ElapsedFieldProps['check']): string | null {
  if (text.trim() === '') return null;
  const elapsedMs = readElapsedMs(text);
  return elapsedMs === null ? say.notATime(text.trim()) : check(elapsedMs);
}
