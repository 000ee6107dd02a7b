import type { ComponentChildren } from 'preact';
import { fieldWords } from '../../text/fields.ts';

/** A name above a box, and below it what is wrong with what was typed, if anything is. */
export function Field({ id, label, wrong, elsewhere = null, children }: FieldProps) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="box">{children}</div>
      {wrong && (
        <p class="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
      {elsewhere !== null && (
        <p class="small" role="status">
          {fieldWords.elsewhere(elsewhere)}
        </p>
      )}
    </div>
  );
}

interface FieldProps {
  id: string;
  label: string;
  wrong: string | null;
  /** What was stored from elsewhere while the box was being typed in. */
  elsewhere?: string | null;
  children: ComponentChildren;
}
