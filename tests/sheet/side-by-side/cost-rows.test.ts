import { expect, it } from 'vitest';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import { makeSideBySide } from '../../../src/sheet/model/side-by-side/make-side-by-side.ts';
import type { SideBySideInput } from '../../../src/sheet/model/side-by-side/side-by-side-input.ts';
import { hutRecord } from '../hut-pack.ts';
import { fullRun } from '../live-tests/bench-tests.ts';
import { plain } from '../live-tests/texts-of.ts';
import { compared, comparisonOf } from './hut-comparison.ts';

const PACK = 'a'.repeat(32);
const tests = {
  ...NO_LIVE_TESTS,
  runs: [fullRun(1, { chargedToV: 28.8, chargeAh: 90, energyWh: 2000, currentA: 20 })],
};
const nameplate = { ...hutRecord().nameplate, chargeVoltageV: 28.8 };
const { answers } = hutRecord();
const { 'case-label': _, ...labelOpen } = answers;

// 640 over 2.0 kWh is 320; the lug (workshop) has failed, the label (outside) is weak.
function afterCosts(given: Partial<PackRecord>, prices?: SideBySideInput['prices']): string[] {
  const pack = compared({ packId: PACK, nameplate, tests, ...given });
  const { sections } = makeSideBySide(comparisonOf([pack], prices && { prices }));
  const grid = sections.flatMap(({ blocks }) => blocks).find((block) => block.kind === 'grid');
  return (grid?.rows ?? [])
    .filter(({ label }) => label.includes('after'))
    .flatMap(({ cells }) => cells.map(({ text, note }) => plain(note === null ? text : `${text} (${note})`)));
}

it('is 322 with a label of 4 outside and 350 with a lug of 56 on top, both sure', () => {
  expect(afterCosts({ remedyNotes: { 'own-label': { price: 4 }, 'new-lug': { price: 56 } } })).toEqual([
    'EUR 322.00',
    'EUR 350.00',
  ]);
});

it('is 322 only if needed where the label may be sound, and not “at least” while the lug has no price', () => {
  expect(afterCosts({ answers: labelOpen, remedyNotes: { 'own-label': { price: 4 } } })).toEqual([
    'EUR 322.00 (if all of it is needed and can be done)',
    'EUR 322.00 (if all of it is needed and can be done; one remedy has no price)',
  ]);
});

it('says of a label in USD beside a pack in EUR that it is in another currency, not that it has no price', () => {
  const remedyNotes = { 'own-label': { price: 4, currency: 'USD' }, 'new-lug': { price: 60 } };
  expect(afterCosts({ remedyNotes })).toEqual([
    '– (price and remedies in different currencies)',
    'at least EUR 350.00 (one remedy is in another currency)',
  ]);
});

it('counts a label of 4 USD once the pack is priced anew in USD: (600 + 4) over 2.0 kWh is 302', () => {
  const price = {
    price: 600,
    currency: 'USD',
    pricedOn: null,
    seller: null,
    label: null,
    options: [],
    leftOut: [],
  };
  expect(afterCosts({ remedyNotes: { 'own-label': { price: 4, currency: 'USD' } } }, [price])).toEqual([
    'USD 302.00',
    'at least USD 302.00 (one remedy has no price)',
  ]);
});
