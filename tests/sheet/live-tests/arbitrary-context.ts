import * as fc from 'fast-check';
import { foldLiveTests } from '../../../src/record/fold-live-tests.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import { LIVE_TEST_SUBJECTS, type LiveTestSubject } from '../../../src/schema/live-tests/live-tests.ts';
import { type Nameplate, nameplateFields } from '../../../src/schema/nameplate.ts';
import type { LiveContext } from '../../../src/sheet/model/live-tests/live-context.ts';
import { hutPhoto, stampAt } from '../hut-pack.ts';
import { arbitraryOf, type Reach } from './arbitrary-of.ts';

const SUBJECTS = Object.keys(LIVE_TEST_SUBJECTS) as LiveTestSubject[];
/** Few ids, so that tests name instruments, logs, sets and rulers that are there, and some that are not. */
const ids = fc.constantFrom(...['1', '2', '3'].map((digit) => digit.repeat(32)));
const hashes = fc.constantFrom(...['1', '2'].map((digit) => digit.repeat(64)));
const numbers = fc.integer({ min: 1, max: 8 });

function entryOf(subject: LiveTestSubject, reach: Reach): fc.Arbitrary<Entry> {
  const part =
    subject === 'log'
      ? hashes
      : subject === 'cell' || subject === 'parallelShare'
        ? fc.tuple(ids, numbers).map(([id, number]) => `${id}/${number}`)
        : ids;
  const linked = fc.record({ instrumentId: ids, rulerId: ids, photoId: hashes });
  return fc
    .tuple(part, arbitraryOf(LIVE_TEST_SUBJECTS[subject].value, reach), linked)
    .map(([id, value, links]): Entry => {
      const named = Object.fromEntries(Object.entries(links).filter(([key]) => key in value));
      return {
        key: ['a'.repeat(32), subject, id],
        v: { ...value, ...named, ...photoOf(value) },
        at: stampAt(1),
        by: 'b'.repeat(32),
      };
    });
}

/** A size from a photo counts only while it is the lead's own: some are. */
function photoOf(value: object): object {
  if (!('byPhoto' in value && 'diameterMm' in value)) return {};
  return { byPhoto: { ...(value.byPhoto as object), mm: value.diameterMm } };
}

function arbitraryNameplate(reach: Reach): fc.Arbitrary<Nameplate> {
  const model = Object.fromEntries(
    Object.entries(nameplateFields).map(([field, schema]) => [field, arbitraryOf(schema, reach)]),
  );
  return fc.record(model, { requiredKeys: [] });
}

/** Any nameplate with any live tests, a photo and either system of units. */
export function arbitraryContext(reach: Reach): fc.Arbitrary<LiveContext> {
  const entries = fc.tuple(
    ...SUBJECTS.map((subject) =>
      fc.uniqueArray(entryOf(subject, reach), {
        maxLength: subject === 'cell' ? 16 : 3,
        selector: ({ key }) => key[2],
      }),
    ),
  );
  return fc.record({
    nameplate: arbitraryNameplate(reach),
    tests: entries.map((lists) => foldLiveTests(lists.flat())),
    units: fc.constantFrom('metric' as const, 'imperial' as const),
    photos: fc.constant([hutPhoto(1, { id: '1'.repeat(64) })]),
  });
}
