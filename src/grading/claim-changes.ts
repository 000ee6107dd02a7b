import { pricePerKwh } from '../calc/price-per-kwh.ts';
import { promisedEnergy } from '../calc/promised-energy.ts';
import { NAMEPLATE_FIELDS, type Nameplate, type NameplateField } from '../schema/nameplate.ts';
import { NAMEPLATE_BELONGS } from './nameplate-belongs.ts';

/** A line of the Nameplate that reads otherwise. Null where it was left empty. */
export interface ClaimChange {
  field: NameplateField | 'pricePerPromisedKwh';
  was: string | number | boolean | null;
  now: string | number | boolean | null;
}

/** What the two nameplates say differently: claims, what was weighed and measured, the price and what it buys. */
export function claimChanges(was: Nameplate, now: Nameplate): ClaimChange[] {
  const compared = NAMEPLATE_FIELDS.filter((field) => NAMEPLATE_BELONGS[field].compared);
  const fields = compared.map(
    (field): ClaimChange => ({
      field,
      was: was[field] ?? null,
      now: now[field] ?? null,
    }),
  );
  const perKwh: ClaimChange = {
    field: 'pricePerPromisedKwh',
    was: pricePerPromisedKwh(was),
    now: pricePerPromisedKwh(now),
  };
  const isOtherMoney = was.currency !== now.currency;
  return [...fields, perKwh].filter(({ field, was: before, now: after }) => {
    const isMoney = field === 'price' || field === 'pricePerPromisedKwh';
    return before !== after || (isMoney && isOtherMoney && before !== null);
  });
}

function pricePerPromisedKwh(nameplate: Nameplate): number | null {
  const energy = promisedEnergy(nameplate);
  if (nameplate.price === undefined || energy === null) return null;
  return pricePerKwh({ price: nameplate.price, energyWh: energy.energyWh });
}
