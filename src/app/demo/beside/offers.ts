import type { Put } from '../../../storage/store.ts';
import { demoOfferWords as say } from '../../../text/demo-offers.ts';
import { WREN } from '../wren.ts';
import type { BesideFacts } from './beside.ts';

/** Ids within a pack from here on are the offers' own. */
const FIRST_ID = 0x4000;

/** What the two packs cost since, and what an option adds. */
export function offerEntries({ pack, idOf, dayBefore }: BesideFacts): Put[] {
  const isWren = pack.packId === WREN.packId;
  const offers = isWren
    ? [
        { kind: 'price', price: 589, pricedOn: dayBefore(4), seller: say.wren.seller },
        { kind: 'option', label: say.wren.heating, price: 48, pricedOn: dayBefore(4) },
      ]
    : [
        { kind: 'price', price: 449, pricedOn: dayBefore(6), seller: say.dipper.seller },
        { kind: 'option', label: say.dipper.lead, price: 35, pricedOn: dayBefore(6) },
      ];
  return offers.map((offer, place) => ({
    subject: 'offer',
    part: idOf(FIRST_ID + place),
    v: { ...offer, currency: 'EUR', made: null },
  }));
}
