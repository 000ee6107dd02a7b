import type { JSX } from 'preact';
import { fieldWords } from '../../text/fields.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { UnitChoice } from '../../units/unit-choice.ts';
import { limitProblem } from '../parts/limit-problem.ts';
import { notNegative, positive, type ShownNumber, shownLength, shownTemperature } from '../parts/shown-number.ts';
import { fieldAllows, neededFields, schemaOf } from './storable-test.ts';
import type { NumberBox, OneByOne, TestField, TestKind, TestValue } from './test-kind.ts';

interface TestBoxProps<S extends OneByOne> {
  kind: TestKind<S>;
  field: TestField<TestValue<S>>;
  value: TestValue<S>;
  /** Whose box it is: what could not be stored waits there for this test only. */
  owner: string;
  units: UnitChoice;
  onChange: (value: unknown) => void;
}

/** One field of a test as a box to type or choose in. */
export function TestBox<S extends OneByOne>({ kind, field, value, owner, units, onChange }: TestBoxProps<S>) {
  const labels: Readonly<Record<string, string>> = kind.labels;
  const label = field.label?.(value) ?? labels[field.key] ?? field.key;
  const stored: unknown = value[field.key as keyof TestValue<S>];
  const needed = neededFields(kind.subject).includes(field.key);
  const id = `test-${field.key}`;

  function numberBox(shown: ShownNumber): JSX.Element {
    const toStored = (typed: number) => shown.toStored?.(typed) ?? typed;
    return (
      <NumberField
        id={id}
        owner={owner}
        label={label}
        unit={shown.unit}
        value={typeof stored === 'number' ? (shown.toShown?.(stored) ?? stored) : null}
        onChange={(typed) => onChange(typed === null ? null : toStored(typed))}
        check={(typed) => {
          const schema = schemaOf(kind.subject, field.key);
          if (schema === undefined) return fieldWords.outOfRange;
          return shown.check(typed) ?? limitProblem(schema, typed, shown);
        }}
        whole={shown.whole ?? false}
        signed={shown.signed ?? false}
        {...(needed && { needed: fieldWords.stillNeeded })}
        {...(shown.converted && { significantDigits: 6 })}
      />
    );
  }

  // Which keys a box may name is for the kind's own file to be held to; here any will do.
  const box = field as AnyBox;
  switch (box.box) {
    case 'number':
      return numberBox(shownNumber(box));
    case 'temperature':
      return numberBox(shownTemperature(units));
    case 'length':
      return numberBox(shownLength(units));
    case 'choice':
      return (
        <ChoiceField<string>
          label={label}
          choices={box.choices}
          chosen={typeof stored === 'string' ? stored : null}
          onChoose={onChange}
          {...(!needed && { onClear: () => onChange(null) })}
        />
      );
    case 'yesNo':
      return (
        <ChoiceField
          label={label}
          choices={[
            { id: 'yes', text: box.yes ?? say.yes },
            { id: 'no', text: box.no ?? say.no },
          ]}
          chosen={typeof stored === 'boolean' ? (stored ? 'yes' : 'no') : null}
          onChoose={(answer) => onChange(answer === 'yes')}
          {...(!needed && { onClear: () => onChange(null) })}
        />
      );
    case 'text': {
      const tidy = box.tidy ?? ((text: string) => text);
      return (
        <TextField
          id={id}
          owner={owner}
          label={label}
          value={typeof stored === 'string' ? stored : ''}
          onChange={(text) => onChange(tidy(text))}
          check={(text) => {
            if (text === '') return needed && stored !== undefined ? fieldWords.stillNeeded : null;
            return fieldAllows(kind.subject, field.key, tidy(text)) ? null : (box.wrong ?? fieldWords.outOfRange);
          }}
          {...(box.offers && { offers: box.offers })}
        />
      );
    }
  }
}

type AnyBox =
  | Omit<NumberBox<never>, 'key'>
  | { box: 'temperature' | 'length' }
  | { box: 'choice'; choices: readonly { id: string; text: string }[] }
  | { box: 'yesNo'; yes?: string; no?: string }
  | { box: 'text'; offers?: readonly string[]; tidy?(text: string): string; wrong?: string };

function shownNumber({ unit, least, whole, storedPerShown }: Omit<NumberBox<never>, 'key'>): ShownNumber {
  const check = { aboveZero: positive, zero: notNegative, any: () => null }[least];
  return {
    unit,
    check,
    signed: least === 'any',
    whole: whole ?? false,
    ...(storedPerShown !== undefined && {
      converted: true,
      toShown: (stored: number) => stored / storedPerShown,
      toStored: (shown: number) => shown * storedPerShown,
    }),
  };
}
