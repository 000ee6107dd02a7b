import { expect, it } from 'vitest';
import { isEmptyPack } from '../../src/app/is-empty-pack.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';

const PACK = 'a'.repeat(32);
const BY = 'd'.repeat(32);
const entry = (subject: string, part: string, v: unknown): Entry => ({
  key: [PACK, subject, part],
  v,
  at: `000000000000001.000000.${BY}`,
  by: BY,
});
const BEGUN = [
  entry('pack', 'made', {}),
  entry('pack', 'checklist', { id: 'lfp-drop-in', version: '1.1.0', sha256: 'c'.repeat(64) }),
  entry('nameplate', 'sample', '1'),
];
const CLOSING = {
  revision: 1,
  closedAtMs: 1,
  appVersion: '0.1.0',
  byteCount: 9,
  entriesSha256: 'e'.repeat(64),
  score: null,
  verdict: { low: 'keepOut', high: 'noFinding' },
  settled: false,
};

it('a pack with its number and its checklist alone is empty', () => {
  expect(isEmptyPack(foldRecord(PACK, BEGUN))).toBe(true);
});

it.each([
  ['a sheet closed over nothing', entry('closing', 'b'.repeat(64), CLOSING)],
  ['a name', entry('nameplate', 'name', 'Heron')],
  ['an answer', entry('answer', 'handles', { kind: 'notSeen', reason: 'noAccess' })],
  ['a fact', entry('fact', 'metal-case', { choice: 'yes' })],
  ['an opinion', entry('words', 'opinion', 'Heavy for its size.')],
])('one with %s is not', (_, more) => {
  const record = foldRecord(PACK, [...BEGUN, more]);
  expect(record.setAside).toEqual([]);
  expect(isEmptyPack(record)).toBe(false);
});
