interface SelectFieldProps<T extends string> {
  id: string;
  label: string;
  choices: readonly { id: T; text: string }[];
  chosen: T;
  onChoose: (id: T) => void;
}

/** One of many, by the phone's own list. */
export function SelectField<T extends string>({ id, label, choices, chosen, onChoose }: SelectFieldProps<T>) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="box select">
        <select
          id={id}
          value={chosen}
          onChange={(event) => {
            const choice = choices.find((one) => one.id === event.currentTarget.value);
            if (choice && choice.id !== chosen) onChoose(choice.id);
          }}
        >
          {choices.map(({ id: value, text }) => (
            <option key={value} value={value} selected={value === chosen}>
              {text}
            </option>
          ))}
        </select>
        <span class="unit" aria-hidden="true">
          ▾
        </span>
      </div>
    </div>
  );
}
