import { describe, expect, it } from 'vitest';
import { missingForMakeSafe } from '../../src/app/make-safe-draft.ts';
import { CAUTIONS, makeSafeWords } from '../../src/text/make-safe.ts';

const full = {
  packVoltageV: 0,
  chargeState: 'low' as const,
  company: 'alone' as const,
  photoId: 'a'.repeat(64),
  acknowledged: CAUTIONS.map(({ id }) => id),
};
const parts = makeSafeWords.missingParts;

describe('what is missing before Lid off opens', () => {
  it('is nothing when all is given, a voltage of 0 V included', () => {
    expect(missingForMakeSafe(full, CAUTIONS)).toEqual([]);
  });

  it.each([
    ['voltage', { packVoltageV: null }, parts.voltage],
    ['charge state', { chargeState: null }, parts.chargeState],
    ['company', { company: null }, parts.company],
    ['photo', { photoId: null }, parts.photo],
    ['2 cautions', { acknowledged: full.acknowledged.slice(2) }, parts.cautions(2)],
  ])('names the %s alone', (_name, change, words) => {
    expect(missingForMakeSafe({ ...full, ...change }, CAUTIONS)).toEqual([words]);
  });

  it('asks for a second person from 50 V on, and not at 49.9 V', () => {
    expect(missingForMakeSafe({ ...full, packVoltageV: 50 }, CAUTIONS)).toEqual([parts.secondPerson]);
    expect(missingForMakeSafe({ ...full, packVoltageV: 49.9 }, CAUTIONS)).toEqual([]);
    expect(missingForMakeSafe({ ...full, packVoltageV: 58.4, company: 'second-person' }, CAUTIONS)).toEqual([]);
  });

  it('asks 11 cautions above 50 V and 9 below, none under the same id', () => {
    expect(CAUTIONS).toHaveLength(11);
    expect(CAUTIONS.filter(({ above50V }) => !above50V)).toHaveLength(9);
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(11);
  });
});
