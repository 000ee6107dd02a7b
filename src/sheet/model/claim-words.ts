import type { ClaimChange } from '../../grading/claim-changes.ts';
import { formatLength, formatMass, formatPrice, formatTemperature, formatValue } from '../../text/format-unit.ts';
import { nameplateWords } from '../../text/nameplate.ts';
import { sinceWords } from '../../text/since.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';

type Field = ClaimChange['field'];

/** The label of a line of the nameplate. */
export function claimLabel(field: Field): string {
  return field === 'pricePerPromisedKwh' ? sinceWords.claims.pricePerPromisedKwh : nameplateWords.labels[field];
}

/** One side of a changed line, with its unit; a box that was left empty says so. */
export function claimValue(
  field: Field,
  value: ClaimChange['was'],
  { units, currency }: { units: UnitChoice; currency: string | undefined },
): string {
  if (value === null) return sinceWords.empty;
  if (typeof value === 'boolean') return value ? nameplateWords.yes : nameplateWords.no;
  if (typeof value === 'string') return value;
  if (field === 'price' || field === 'pricePerPromisedKwh') return formatPrice(value, currency);
  if (field.endsWith('Kg')) return formatMass(value, units);
  if (field.endsWith('Mm')) return formatLength(value, units);
  if (field.endsWith('DegC')) return formatTemperature(value, units);
  const unit = UNITS.find((name) => field.endsWith(name));
  return unit === undefined ? `${value}` : formatValue(value, unit === 'ForS' ? 's' : unit);
}

/** Endings of the fields' names, longer ones first; a count has none. */
const UNITS = ['Ah', 'Wh', 'ForS', 'V', 'A'] as const;
