interface ChoiceFieldProps<T extends string> {
  label: string;
  choices: readonly { id: T; text: string }[];
  chosen: T | null;
  onChoose: (id: T) => void;
  /** Tapping the chosen one again takes it back. */
  onClear?: () => void;
}

/** A few choices side by side; what is chosen is inked in. */
export function ChoiceField<T extends string>({ label, choices, chosen, onChoose, onClear }: ChoiceFieldProps<T>) {
  return (
    <div class="field">
      <span class="label">{label}</span>
      <div class="choices" role="radiogroup" aria-label={label}>
        {choices.map(({ id, text }) => (
          // biome-ignore lint/a11y/useSemanticElements: dressed as a button, answers like a radio
          <button
            key={id}
            type="button"
            class="choice"
            role="radio"
            aria-checked={chosen === id}
            onClick={() => (chosen === id && onClear ? onClear() : onChoose(id))}
          >
            {text}
          </button>
        ))}
      </div>
    </div>
  );
}
