import type { JSX } from 'preact';
import { type NameplateField, nameplateFields } from '../../schema/nameplate.ts';
import { nameplateWords } from '../../text/nameplate.ts';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';
import { limitProblem } from './limit-problem.ts';
import { notNegative, positive, type ShownNumber, shownLength, shownMass, shownTemperature } from './shown-number.ts';

const { labels } = nameplateWords;
const CURRENCIES = ['EUR', 'USD', 'GBP', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'AUD', 'CAD', 'NZD', 'CNY', 'JPY'];

export type NameplateBoxes = ReturnType<typeof nameplateBoxes>;

/** Boxes for the fields of the Nameplate, each tied to its entry; shown in the units of the phone, stored metric. */
export function nameplateBoxes(session: PackSession) {
  const { nameplate } = session.record.value;
  const { units } = settings.value;

  function put(field: NameplateField, value: string | number | boolean | null) {
    const label = labels[field];
    const base = { subject: 'nameplate', part: field };
    void session.put({ puts: [value === null ? { ...base, gone: true } : { ...base, v: value }], undoLabel: label });
  }
  function numeric(field: NameplateField, shown: ShownNumber): JSX.Element {
    const stored = nameplate[field];
    return (
      <NumberField
        id={field}
        owner={session.packId}
        label={labels[field]}
        unit={shown.unit}
        value={typeof stored === 'number' ? (shown.toShown?.(stored) ?? stored) : null}
        onChange={(value) => put(field, value === null ? null : (shown.toStored?.(value) ?? value))}
        check={(value) => shown.check(value) ?? limitProblem(nameplateFields[field], value, shown)}
        whole={shown.whole ?? false}
        signed={shown.signed ?? false}
        {...(shown.converted && { significantDigits: 6 })}
      />
    );
  }
  return {
    put,
    text(field: NameplateField, options: { lines?: 'one' | 'many' } = {}): JSX.Element {
      const stored = nameplate[field];
      return (
        <TextField
          id={field}
          label={labels[field]}
          value={typeof stored === 'string' ? stored : ''}
          onChange={(text) => put(field, text === '' ? null : text)}
          maxLength={options.lines === 'many' ? 2000 : 120}
          lines={options.lines ?? 'one'}
        />
      );
    },
    currency(): JSX.Element {
      return (
        <TextField
          id="currency"
          label={labels.currency}
          value={nameplate.currency ?? ''}
          onChange={(text) => {
            const code = text.toUpperCase();
            if (code === '') put('currency', null);
            else if (/^[A-Z]{3}$/.test(code)) put('currency', code);
          }}
          maxLength={3}
          offers={CURRENCIES}
        />
      );
    },
    number: (field: NameplateField, unit: string, options: { zeroAllowed?: boolean } = {}) =>
      numeric(field, { unit, check: options.zeroAllowed ? notNegative : positive }),
    count: (field: NameplateField) => numeric(field, { unit: '', check: positive, whole: true }),
    mass: (field: NameplateField) => numeric(field, shownMass(units)),
    length: (field: NameplateField) => numeric(field, shownLength(units)),
    temperature: (field: NameplateField) => numeric(field, shownTemperature(units)),
  };
}
