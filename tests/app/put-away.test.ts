import { expect, it } from 'vitest';
import { cardOf } from '../../src/app/card-of.ts';
import { bringBackPut, putAwayPut } from '../../src/app/put-away.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import { checkEntry } from '../../src/schema/check-entry.ts';
import type { Put } from '../../src/storage/store.ts';
import { entry, PACK, tombstone } from '../record/made-entries.ts';
import { HUT_CHECKLIST } from '../sheet/hut-pack.ts';

const entriesOf = (put: Put) => [
  'gone' in put ? tombstone(put.subject, put.part) : entry(put.subject, put.part, put.v),
];

function cardAfter(put: Put) {
  const entries = entriesOf(put);
  expect(entries.map((one) => checkEntry(one).ok)).toEqual([true]);
  const record = foldRecord(PACK, entries);
  const { gone, demo } = cardOf(record, gradeRecord(HUT_CHECKLIST, record));
  return { gone, demo };
}

it.each([true, false])('a pack that is put away and brought back is as invented as it was: %s', (demo) => {
  const away = cardAfter(putAwayPut({ demo }));
  expect(away).toEqual({ gone: true, demo });
  expect(cardAfter(bringBackPut(away))).toEqual({ gone: false, demo });
});
