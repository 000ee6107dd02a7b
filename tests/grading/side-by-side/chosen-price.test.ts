import { describe, expect, it } from 'vitest';
import { AS_PAID, chosenPrice } from '../../../src/grading/side-by-side/chosen-price.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';

type Priced = Pick<PackRecord, 'nameplate' | 'offers'>;
const offer = (id: string, rest: object) =>
  ({ id, made: `${'0'.repeat(15)}.000000.${'a'.repeat(32)}`, ...rest }) as Priced['offers'][number];

const pack: Priced = Object.freeze({
  nameplate: { price: 649, currency: 'EUR', pricedOn: '2026-10-23' },
  offers: [
    offer('p', { kind: 'price', price: 599, currency: 'EUR', pricedOn: '2026-11-20', seller: 'the hut shop' }),
    offer('h', { kind: 'option', label: 'heater', price: 45, currency: 'EUR' }),
    offer('d', { kind: 'option', label: 'data link', price: 20, currency: 'EUR' }),
    offer('f', { kind: 'option', label: 'freight', price: 30, currency: 'CHF' }),
  ],
});

describe('the price a comparison counts with', () => {
  it('is the 649 paid unless another is chosen', () => {
    expect(chosenPrice(pack, AS_PAID)).toEqual({
      price: 649,
      currency: 'EUR',
      pricedOn: '2026-10-23',
      seller: null,
      label: null,
      options: [],
      leftOut: [],
    });
  });

  it('is 664 for the later 599 with the heater at 45 and the data link at 20', () => {
    const found = chosenPrice(pack, { offerId: 'p', optionIds: ['h', 'd'] });
    expect(found).toMatchObject({ price: 664, pricedOn: '2026-11-20', seller: 'the hut shop' });
    expect(found?.options).toEqual([
      { label: 'heater', price: 45 },
      { label: 'data link', price: 20 },
    ]);
  });

  it('leaves out the option in francs and says so: 649', () => {
    expect(chosenPrice(pack, { offerId: null, optionIds: ['f'] })).toMatchObject({ price: 649, leftOut: ['freight'] });
  });

  it('goes back to the 649 paid when the chosen price was taken out, or an option is named as one', () => {
    expect(chosenPrice(pack, { offerId: 'gone', optionIds: [] })?.price).toBe(649);
    expect(chosenPrice(pack, { offerId: 'h', optionIds: [] })?.price).toBe(649);
  });

  it('is none where no price was noted, which is not zero; a gift at 0 is 0', () => {
    expect(chosenPrice({ nameplate: {}, offers: [] }, AS_PAID)).toBeNull();
    expect(chosenPrice({ nameplate: { price: 0 }, offers: [] }, AS_PAID)?.price).toBe(0);
  });
});
