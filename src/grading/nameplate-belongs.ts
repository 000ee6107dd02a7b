import type { NameplateField } from '../schema/nameplate.ts';

/** What becomes of a field of the Nameplate when the product is tested again. */
export interface Belonging {
  /** Taken over into the new pack's nameplate, to be checked against its own label. */
  taken: boolean;
  /** Set side by side in "what changed since". */
  compared: boolean;
  because: string;
}

const claim: Belonging = {
  taken: true,
  compared: true,
  because: 'a claim of the maker for every pack of this product',
};
const measured: Belonging = {
  taken: false,
  compared: true,
  because: 'found on the one sample: it is weighed and measured anew',
};
const onLabel: Belonging = { taken: false, compared: false, because: 'printed on the one sample' };
const purchase: Belonging = { taken: false, compared: false, because: 'of the one purchase' };

/** Every field, so that a new one must be thought about here. */
export const NAMEPLATE_BELONGS: Readonly<Record<NameplateField, Belonging>> = {
  name: { taken: true, compared: false, because: 'the product keeps its name, or the two would not be found together' },
  sample: { taken: false, compared: false, because: 'the next free number among packs of that name takes its place' },
  maker: claim,
  model: claim,
  serial: onLabel,
  revision: {
    taken: false,
    compared: true,
    because: 'a maker may change it from one sample to the next without a word: it is read off this label',
  },
  madeOn: onLabel,
  nominalVoltageV: claim,
  ratedCapacityAh: claim,
  ratedEnergyWh: claim,
  cellsInSeries: claim,
  stringsInParallel: claim,
  continuousCurrentA: claim,
  peakCurrentA: claim,
  peakForS: claim,
  chargeCurrentA: claim,
  chargeVoltageV: claim,
  cutOffVoltageV: claim,
  chargeLowestDegC: claim,
  chargeHighestDegC: claim,
  dischargeLowestDegC: claim,
  dischargeHighestDegC: claim,
  claimedMassKg: claim,
  massKg: measured,
  lengthMm: measured,
  widthMm: measured,
  heightMm: measured,
  ipCode: claim,
  cycleLife: claim,
  warranty: claim,
  marks: claim,
  price: { taken: false, compared: true, because: 'paid for the one sample, on its own day' },
  currency: { taken: true, compared: false, because: 'the tester buys in the same money; it is shown with the price' },
  pricedOn: purchase,
  seller: purchase,
  receivedOn: purchase,
  obtained: { taken: false, compared: false, because: 'how this sample came must be said of it, never assumed' },
  obtainedFrom: purchase,
  paysCommission: { taken: false, compared: false, because: 'an interest is declared anew for every sheet' },
  note: { taken: false, compared: false, because: 'written of the one sample' },
};
