import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import type { SheetInput } from '../../src/sheet/model/sheet-context.ts';
import { HUT_CHECKLIST, hutRecord, hutSheet, stampAt } from './hut-pack.ts';

/** SHA-256 of "" and of "abc": FIPS 180-4 examples, as printed by `printf '' | sha256sum` and `printf abc | sha256sum`. */
export const HASH_1 = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';
export const HASH_2 = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
export const HASH_2_GROUPS = 'ba78 16bf 8f01 cfea 4141 40de 5dae 2223 b003 61a3 9617 7a9c b410 ff61 f200 15ad';

type RecordClosing = PackRecord['closings'][number];
type RecordAttachment = PackRecord['attachments'][number];

/** Closed on 25 November 2026 at 09:02 UTC with the score and verdict of the hut pack. */
export const FIRST: RecordClosing = {
  sha256: HASH_1,
  revision: 1,
  closedAtMs: Date.UTC(2026, 10, 25, 9, 2),
  appVersion: '0.4.0',
  byteCount: 123_456,
  entriesSha256: 'e'.repeat(64),
  score: { low: 14.5, high: 19.5 },
  verdict: { low: 'workshopFirst', high: 'workshopFirst' },
  settled: false,
};
/** Closed on 2 December 2026 at 23:40 UTC, which is the 3rd on a clock one hour ahead. */
export const SECOND: RecordClosing = {
  ...FIRST,
  sha256: HASH_2,
  revision: 2,
  closedAtMs: Date.UTC(2026, 11, 2, 23, 40),
  after: HASH_1,
  reason: 'The lug was crimped again before it was sent',
  score: { low: 48.25, high: 48.25 },
  verdict: { low: 'mindTheList', high: 'mindTheList' },
  settled: true,
};
export const OPENED = {
  id: '1'.repeat(32),
  after: HASH_1,
  reason: 'A photo was found.',
  openedAtMs: Date.UTC(2026, 11, 1, 8, 0),
};

export const attachment = (given: Partial<RecordAttachment>): RecordAttachment => ({
  id: '2'.repeat(32),
  kind: 'makerReply',
  text: 'We have changed the crimp tool.\nFrom serial 2200 on every lug is pulled.',
  from: 'Wren Works',
  on: '2026-12-04',
  to: HASH_2,
  made: stampAt(5),
  ...given,
});

export const CLOSED_ONCE: Partial<PackRecord> = {
  closings: [FIRST],
  sheet: { now: 'closed', sha256: HASH_1, revision: 1 },
};
export const CLOSED_TWICE: Partial<PackRecord> = {
  closings: [FIRST, SECOND],
  reopenings: [OPENED],
  sheet: { now: 'closed', sha256: HASH_2, revision: 2 },
};
export const REVISING: Partial<PackRecord> = {
  closings: [FIRST],
  reopenings: [OPENED],
  sheet: { now: 'revising', sha256: HASH_1, revision: 1, reason: OPENED.reason, openedAtMs: OPENED.openedAtMs },
};

export function closedSheet(record: Partial<PackRecord>, given: Partial<SheetInput> = {}): Sheet {
  return hutSheet(hutRecord(record), HUT_CHECKLIST, given);
}
