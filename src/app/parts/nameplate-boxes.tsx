import type { JSX } from 'preact';
import type { NameplateField } from '../../schema/nameplate.ts';
import { fieldWords } from '../../text/fields.ts';
import { nameplateWords } from '../../text/nameplate.ts';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { inFromMm, mmFromIn } from '../../units/length-in.ts';
import { kgFromLb, lbFromKg } from '../../units/mass-lb.ts';
import { degCFromDegF, degFFromDegC } from '../../units/temperature.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';

const { labels } = nameplateWords;
const CURRENCIES = ['EUR', 'USD', 'GBP', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'AUD', 'CAD', 'NZD', 'CNY', 'JPY'];

export type NameplateBoxes = ReturnType<typeof nameplateBoxes>;

/** Boxes for the fields of the Nameplate, each tied to its entry; shown in the units of the phone, stored metric. */
export function nameplateBoxes(session: PackSession) {
  const { nameplate } = session.record.value;
  const imperial = settings.value.units === 'imperial';

  function put(field: NameplateField, value: string | number | boolean | null) {
    const label = labels[field];
    const base = { subject: 'nameplate', part: field };
    void session.put({ puts: [value === null ? { ...base, gone: true } : { ...base, v: value }], undoLabel: label });
  }
  function numeric(field: NameplateField, shown: Shown): JSX.Element {
    const stored = nameplate[field];
    return (
      <NumberField
        id={field}
        owner={session.packId}
        label={labels[field]}
        unit={shown.unit}
        value={typeof stored === 'number' ? (shown.toShown?.(stored) ?? stored) : null}
        onChange={(value) => put(field, value === null ? null : (shown.toStored?.(value) ?? value))}
        check={shown.check}
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
    mass: (field: NameplateField) =>
      numeric(field, {
        check: positive,
        converted: true,
        ...(imperial ? { unit: 'lb', toShown: lbFromKg, toStored: kgFromLb } : { unit: 'kg' }),
      }),
    length: (field: NameplateField) =>
      numeric(field, {
        check: positive,
        converted: true,
        ...(imperial ? { unit: 'in', toShown: inFromMm, toStored: mmFromIn } : { unit: 'mm' }),
      }),
    temperature: (field: NameplateField) =>
      numeric(
        field,
        imperial ? FAHRENHEIT : { unit: '°C', signed: true, converted: true, check: (value) => notTooCold(value) },
      ),
  };
}

interface Shown {
  unit: string;
  check: (value: number) => string | null;
  whole?: boolean;
  signed?: boolean;
  /** Kept in the other system of units by some: six digits are shown. */
  converted?: boolean;
  toShown?: (stored: number) => number;
  toStored?: (shown: number) => number;
}

const FAHRENHEIT: Shown = {
  unit: '°F',
  signed: true,
  converted: true,
  check: (value) => notTooCold(degCFromDegF(value)),
  toShown: degFFromDegC,
  toStored: degCFromDegF,
};

function positive(value: number): string | null {
  return value > 0 ? null : fieldWords.positive;
}
function notNegative(value: number): string | null {
  return value >= 0 ? null : fieldWords.negative;
}
function notTooCold(tempDegC: number): string | null {
  if (tempDegC < -273.15) return fieldWords.tooCold;
  return tempDegC <= 500 ? null : fieldWords.tooHot;
}
