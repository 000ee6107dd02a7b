import type { PackRecord } from '../../record/pack-record.ts';

/** Which price of a pack the comparison counts with. `offerId` null: the one paid, on the Nameplate. */
export interface PriceChoice {
  offerId: string | null;
  optionIds: readonly string[];
}

export const AS_PAID: PriceChoice = { offerId: null, optionIds: [] };

export interface ChosenPrice {
  /** The price with all options chosen. */
  price: number;
  currency: string | null;
  pricedOn: string | null;
  seller: string | null;
  /** What a later price is a price of; null of the one paid, and where it was not said. */
  label: string | null;
  /** Counted in; none of them was part of the tested sample. */
  options: { label: string; price: number }[];
  /** Chosen and not counted, because they are in another currency. */
  leftOut: string[];
}

/**
 * The price of a pack as it is chosen; null where there is none. A price that was chosen and has been taken out since
 * gives way to the one paid.
 *
 * Units   the currency's own
 * Check   tests/grading/side-by-side/chosen-price.test.ts
 */
export function chosenPrice(
  { nameplate, offers }: Pick<PackRecord, 'nameplate' | 'offers'>,
  { offerId, optionIds }: PriceChoice,
): ChosenPrice | null {
  const later = offers.find(({ id, kind }) => id === offerId && kind === 'price');
  const base = later ?? nameplate;
  if (base.price === undefined) return null;
  const chosen = offers.filter(({ id, kind }) => kind === 'option' && optionIds.includes(id));
  const inCurrency = chosen.filter(({ currency }) => currency === base.currency);
  return {
    price: inCurrency.reduce((sum, { price }) => sum + price, base.price),
    currency: base.currency ?? null,
    pricedOn: base.pricedOn ?? null,
    seller: base.seller ?? null,
    label: later?.label ?? null,
    options: inCurrency.map(({ label = '', price }) => ({ label, price })),
    leftOut: chosen.filter((option) => !inCurrency.includes(option)).map(({ label = '' }) => label),
  };
}
