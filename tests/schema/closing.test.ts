import { expect, it } from 'vitest';
import { checkEntry } from '../../src/schema/check-entry.ts';
import { attachmentValue, closingValue, entry, HASH_1, HASH_2, OTHER_PACK, tombstone } from '../record/made-entries.ts';

const ID = '4'.repeat(32);
const closing = closingValue(1);
const reopening = { after: HASH_1, reason: 'A photo was found.', openedAtMs: 15_000 };
const attachment = attachmentValue('correction', HASH_1);
const retestOf = { packId: OTHER_PACK, kind: 'productRevision' };
const without = (value: object, field: string) =>
  Object.fromEntries(Object.entries(value).filter(([name]) => name !== field));

it.each([
  ['a first closing', entry('closing', HASH_1, closing)],
  [
    'a closing of revision 2',
    entry('closing', HASH_2, closingValue(2, { after: HASH_1, reason: 'Two lines.\nMore.' })),
  ],
  ['a closing whose score is withheld', entry('closing', HASH_1, { ...closing, score: null })],
  ['a closing with a field of a newer version', entry('closing', HASH_1, { ...closing, signature: 'x' })],
  ['a reopening', entry('reopening', ID, reopening)],
  ['a correction', entry('attachment', ID, attachment)],
  ['a reply without name and day', entry('attachment', ID, without(without(attachment, 'from'), 'on'))],
  ['an attachment taken away', tombstone('attachment', ID)],
  ['a retest of a pack that is not here', entry('pack', 'retestOf', { ...retestOf, label: 'Wren 24 · sample 1' })],
])('accepts %s and hands it back as it came', (_, given) => {
  expect(checkEntry(Object.freeze(given))).toEqual({ ok: true, entry: given, known: true });
});

it.each([
  ['a closing under a random id', entry('closing', ID, closing), 'not a part of closing'],
  ['a closing under a hash in capitals', entry('closing', HASH_1.toUpperCase(), closing), 'not a part of closing'],
  ['revision 0', entry('closing', HASH_1, closingValue(0)), 'revision: '],
  ['revision 1.5', entry('closing', HASH_1, closingValue(1.5)), 'revision: '],
  ['revision 10000', entry('closing', HASH_1, { ...closing, revision: 10_000 }), 'revision: '],
  ['a closing that says no time', entry('closing', HASH_1, without(closing, 'closedAtMs')), 'closedAtMs: '],
  ['a sealed JSON of 0 bytes', entry('closing', HASH_1, { ...closing, byteCount: 0 }), 'byteCount: '],
  [
    'an entries hash of 63 digits',
    entry('closing', HASH_1, { ...closing, entriesSha256: 'e'.repeat(63) }),
    'entriesSha256: ',
  ],
  ['a reason of 2 spaces', entry('closing', HASH_1, { ...closing, reason: '  ' }), 'reason: must say why'],
  ['a closing without its score', entry('closing', HASH_1, without(closing, 'score')), 'score: '],
  ['a score with one end', entry('closing', HASH_1, { ...closing, score: { low: 14.5 } }), 'score.high: '],
  [
    'a verdict that is none',
    entry('closing', HASH_1, { ...closing, verdict: { low: 'fine', high: 'stop' } }),
    'verdict.low: ',
  ],
  ['a closing that is neither settled nor not', entry('closing', HASH_1, without(closing, 'settled')), 'settled: '],
  ['a reopening without a reason', entry('reopening', ID, without(reopening, 'reason')), 'reason: '],
  [
    'a reopening for a reason of a line break',
    entry('reopening', ID, { ...reopening, reason: '\n' }),
    'reason: must say why',
  ],
  ['a reopening of nothing', entry('reopening', ID, { ...reopening, after: '' }), 'after: '],
  ['a reopening under a hash', entry('reopening', HASH_1, reopening), 'not a part of reopening'],
  ['an attachment of an unheard-of kind', entry('attachment', ID, { ...attachment, kind: 'advert' }), 'kind: '],
  [
    'an attachment that says nothing',
    entry('attachment', ID, { ...attachment, text: ' \n ' }),
    'text: must say something',
  ],
  ['an attachment to no revision', entry('attachment', ID, without(attachment, 'to')), 'to: '],
  ['an attachment of a day in words', entry('attachment', ID, { ...attachment, on: '3 December 2026' }), 'on: '],
  ['a retest of itself by name', entry('pack', 'retestOf', { ...retestOf, packId: 'wren' }), 'packId: '],
  ['a retest of an unheard-of kind', entry('pack', 'retestOf', { ...retestOf, kind: 'loan' }), 'kind: '],
])('refuses %s and says why', (_, given, reason) => {
  const check = checkEntry(given);
  expect(check.ok ? 'accepted' : check.reason).toContain(reason);
});
