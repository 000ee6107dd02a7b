import { describe, expect, it } from 'vitest';
import {
  fieldAllows,
  isStorable,
  missingFields,
  neededFields,
  withField,
} from '../../../src/app/live-tests/storable-test.ts';
import { checkEntry } from '../../../src/schema/check-entry.ts';

const ID = '0123456789abcdef0123456789abcdef';
const STAMP = `000001790000000.000000.${'1'.repeat(32)}`;

describe('a test being filled in', () => {
  it('loses a field that is emptied: it is never kept as 0, as no words, or as null', () => {
    const test = Object.freeze({ currentA: 220, note: 'loud' });
    expect(withField(test, 'currentA', null)).toEqual({ note: 'loud' });
    expect(withField(test, 'note', '')).toEqual({ currentA: 220 });
    expect(withField(test, 'opened', false)).toEqual({ currentA: 220, note: 'loud', opened: false });
    expect(withField(test, 'heldForS', 0)).toEqual({ currentA: 220, note: 'loud', heldForS: 0 });
  });

  it('is a trip once its 3 needed fields are there, and not with 2 of them', () => {
    expect(neededFields('trip')).toEqual(['currentA', 'heldForS', 'opened']);
    const two = { on: '2026-11-24', currentA: 220, heldForS: 4 };
    expect(missingFields('trip', two)).toEqual(['opened']);
    expect(isStorable('trip', two)).toBe(false);
    expect(isStorable('trip', { ...two, opened: true })).toBe(true);
  });

  it.each([
    ['instrument', { name: 'Clamp meter' }],
    ['cutOff', { kind: 'highVoltage', acted: false }],
    ['resistance', { method: 'pulse', of: 'pack' }],
    ['lead', { place: 'main', form: 'cable' }],
    ['joint', { place: 'terminal' }],
    ['drain', { currentMa: 0 }],
    ['readOut', { way: 'wireless' }],
  ] as const)(
    'a %s that is storable with its least fields passes as an entry too, and lacks any one of them in vain',
    (subject, least) => {
      expect(isStorable(subject, least)).toBe(true);
      expect(missingFields(subject, least)).toEqual([]);
      const entry = { key: [ID, subject, ID], v: { ...least, made: STAMP }, at: STAMP, by: ID };
      expect(checkEntry(entry)).toEqual({ ok: true, entry, known: true });
      for (const key of Object.keys(least)) expect(isStorable(subject, withField(least, key, null)), key).toBe(false);
    },
  );

  it('refuses a figure that its schema refuses: 0 A of a trip, 41 leads in parallel, AWG 99', () => {
    expect([fieldAllows('trip', 'currentA', 0), fieldAllows('trip', 'currentA', 0.1)]).toEqual([false, true]);
    expect([fieldAllows('lead', 'count', 41), fieldAllows('lead', 'count', 40)]).toEqual([false, true]);
    expect([fieldAllows('lead', 'printedAwg', '99'), fieldAllows('lead', 'printedAwg', '4/0')]).toEqual([false, true]);
    expect(fieldAllows('trip', 'nonsense', 1)).toBe(false);
  });
});
