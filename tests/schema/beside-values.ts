import { PHOTO, stampAt } from '../record/made-entries.ts';

const ID = '4'.repeat(32);
const OTHER_ID = '5'.repeat(32);
const made = stampAt(1000);

/** One value with every field of each subject that stands beside the findings, of each kind it comes in, under a part. */
export const BESIDE_VALUES = {
  offer: [
    {
      part: ID,
      value: {
        kind: 'option',
        label: 'with heating',
        price: 60,
        currency: 'EUR',
        pricedOn: '2026-11-24',
        seller: 'Reed Stores',
        made,
      },
      needed: ['kind', 'price', 'made'],
    },
  ],
  remedyNote: [
    {
      part: 'turn-lug',
      value: {
        price: 4.5,
        currency: 'EUR',
        pricedOn: '2026-11-24',
        parts: 'one lug 35 mm²',
        timeMin: 20,
        note: 'Cold.',
      },
      needed: [],
    },
  ],
  take: [
    {
      part: ID,
      value: { label: 'Close-ups', startedAtMs: 1000, endedAtMs: 61_000, offsetMs: -250, made },
      needed: ['startedAtMs', 'made'],
    },
  ],
  takeMark: [
    {
      part: `${ID}/${OTHER_ID}`,
      value: { kind: 'photo', subject: 'photo', part: PHOTO, atMs: 2000 },
      needed: ['kind', 'subject', 'part', 'atMs'],
    },
    {
      part: `${ID}/${OTHER_ID}`,
      value: { kind: 'word', label: 'the lid', atMs: 2000 },
      needed: ['kind', 'atMs'],
    },
  ],
  secondReader: [
    {
      part: ID,
      value: { label: 'R. Teal', blind: true, finishedAtMs: 9000, firstGrades: { tidy: 'weak' }, made },
      needed: ['made'],
    },
  ],
  secondAnswer: [
    {
      part: `${ID}/cell-vents`,
      value: { kind: 'grade', grade: 'weak', note: 'tape' },
      needed: ['kind', 'grade'],
    },
    { part: `${ID}/cell-vents`, value: { kind: 'doesNotApply', note: 'none there' }, needed: ['kind'] },
    { part: `${ID}/cell-vents`, value: { kind: 'cannotTell', note: 'too dark' }, needed: ['kind'] },
  ],
  voice: [
    {
      part: PHOTO,
      value: {
        on: { kind: 'item', id: 'cell-vents' },
        type: 'audio/webm',
        byteCount: 40_000,
        durationS: 8.5,
        made,
        label: 'the third vent',
      },
      needed: ['on', 'type', 'byteCount', 'durationS', 'made'],
    },
  ],
} as const satisfies Record<string, readonly BesideValue[]>;
export type BesideSubject = keyof typeof BESIDE_VALUES;

export interface BesideValue {
  part: string;
  value: Readonly<Record<string, unknown>>;
  /** What it must say; everything else may be absent. By hand from the shapes' own words. */
  needed: readonly string[];
}
