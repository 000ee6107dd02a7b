import { Field } from './field.tsx';

interface DayFieldProps {
  id: string;
  label: string;
  /** YYYY-MM-DD, or empty. */
  value: string;
  onChange: (day: string) => void;
}

/** A calendar day, by the phone's own picker. */
export function DayField({ id, label, value, onChange }: DayFieldProps) {
  return (
    <Field id={id} label={label} wrong={null}>
      <input
        id={id}
        type="date"
        value={value}
        onChange={(event) => {
          const day = event.currentTarget.value;
          if (day !== value) onChange(day);
        }}
      />
    </Field>
  );
}
