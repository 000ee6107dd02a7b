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

/**
 * What the two nameplates say differently: claims, what was weighed and measured, the price and what it buys. A claim that
 * one of them does not make is a change; what was not weighed, measured or paid yet is none.
 */
export function claimChanges(was: Nameplate, now: Nameplate): ClaimChange[] {
  const compared = NAMEPLATE_FIELDS.filter((field) => NAMEPLATE_BELONGS[field].compared);
  const changes = compared.flatMap((field) => {
    const [before, after] = [was[field] ?? null, now[field] ?? null];
    const isClaim = NAMEPLATE_BELONGS[field].taken;
    return isClaim || (before !== null && after !== null) ? [{ field, was: before, now: after }] : [];
  });
  const [before, after] = [pricePerPromisedKwh(was), pricePerPromisedKwh(now)];
  const perKwh: ClaimChange[] =
    before === null || after === null ? [] : [{ field: 'pricePerPromisedKwh', was: before, now: after }];
  return [...changes, ...perKwh].filter((change: ClaimChange) => {
    const isMoney = change.field === 'price' || change.field === 'pricePerPromisedKwh';
    return change.was !== change.now || (isMoney && was.currency !== now.currency);
  });
}

function pricePerPromisedKwh(nameplate: Nameplate): number | null {
  const energy = promisedEnergy(nameplate);
  if (nameplate.price === undefined || energy === null) return null;
  return pricePerKwh({ price: nameplate.price, energyWh: energy.energyWh });
}
