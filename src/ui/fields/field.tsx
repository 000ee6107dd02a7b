import type { ComponentChildren } from 'preact';

/** A name above a box, and below it what is wrong with what was typed, if anything is. */
export function Field({ id, label, wrong, children }: FieldProps) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="box">{children}</div>
      {wrong && (
        <p class="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}

interface FieldProps {
  id: string;
  label: string;
  wrong: string | null;
  children: ComponentChildren;
}
