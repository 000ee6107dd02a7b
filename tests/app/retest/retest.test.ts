import { describe, expect, it } from 'vitest';
import { retestPuts } from '../../../src/app/retest/begin-retest.ts';
import { nextSample } from '../../../src/app/retest/next-sample.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { packOf } from '../../grading/live-tests/tested-pack.ts';
import { OTHER_PACK, PACK, stampAt } from '../../record/made-entries.ts';

const CHECKLIST = { id: 'lfp-drop-in', version: '1.1.0', sha256: 'a'.repeat(64) };
const PLATE: Nameplate = {
  name: 'Grebe 24',
  sample: '4',
  maker: 'Grebe Works',
  revision: 'B',
  ratedCapacityAh: 100,
  claimedMassKg: 20,
  massKg: 19.8,
  price: 499,
  currency: 'EUR',
  obtained: 'lent',
  paysCommission: false,
  note: 'Came dented.',
};

describe('the number of the next sample', () => {
  it.each([
    [[], '1'],
    [['1'], '2'],
    [['1', '2', '7'], '8'],
    [['B', '2 of the second lot', '01', '-3', ''], '1'],
    [[' 3 '], '4'],
  ])('after %o it is %s', (samples, next) => {
    const cards = samples.map((sample) => ({ name: 'Grebe 24', sample }));
    expect(nextSample('Grebe 24', cards)).toBe(next);
  });

  it('counts packs of that name only, however it is spelt: 3 beside a Wren 24 of sample 9', () => {
    const cards = [
      { name: 'grebe 24 ', sample: '2' },
      { name: 'Wren 24', sample: '9' },
    ];
    expect(nextSample('Grebe 24', cards)).toBe('3');
  });
});

describe('a pack begun from an earlier one', () => {
  const begun = (kind: 'sample' | 'productRevision', earlier = packOf(PLATE)) => {
    const puts = retestPuts(earlier, { kind, sample: '5', checklist: CHECKLIST });
    const entries = puts.map((put, place) => ({
      key: [OTHER_PACK, put.subject, put.part] as [string, string, string],
      v: 'v' in put ? put.v : null,
      at: stampAt(5000 + place),
      by: '1'.repeat(32),
    }));
    const record = foldRecord(OTHER_PACK, entries);
    expect(record.setAside).toEqual([]);
    return record;
  };

  it.each(['sample', 'productRevision'] as const)(
    'as %s holds the five claims and the currency, nothing else',
    (kind) => {
      const record = begun(kind);
      expect(record.nameplate).toEqual({
        name: 'Grebe 24',
        sample: '5',
        maker: 'Grebe Works',
        ratedCapacityAh: 100,
        claimedMassKg: 20,
        currency: 'EUR',
      });
      expect(record).toMatchObject({
        here: true,
        demo: false,
        checklist: CHECKLIST,
        carriedFrom: null,
        route: 'whole',
        retestOf: { packId: PACK, kind, label: 'Grebe 24 · sample 4' },
        answers: {},
        facts: {},
        photos: [],
      });
    },
  );

  it('takes the short route where the earlier one did, and is an invented one where that was', () => {
    const earlier = { ...packOf(PLATE), route: 'short' as const, demo: true };
    expect(begun('sample', earlier)).toMatchObject({ route: 'short', demo: true });
  });

  it('cuts the label of a long name to the 120 characters that an entry may hold', () => {
    const earlier = packOf({ ...PLATE, name: 'x'.repeat(120) });
    expect(begun('sample', earlier).retestOf?.label).toHaveLength(120);
  });
});
