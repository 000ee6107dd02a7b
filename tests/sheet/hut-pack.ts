import * as v from 'valibot';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { NO_LIVE_TESTS } from '../../src/record/fold-live-tests.ts';
import type { PackRecord, RecordPhoto } from '../../src/record/pack-record.ts';
import { type Checklist, checklistSchema } from '../../src/schema/checklist.ts';
import { makeSheet } from '../../src/sheet/model/make-sheet.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import type { SheetInput } from '../../src/sheet/model/sheet-context.ts';
import { deepFreeze } from '../grading/deep-freeze.ts';

/**
 * A checklist of seven items in three zones and one invented pack, small enough to work out by hand.
 *
 *     zone       W   items (weight)
 *     enclosure  1   case-lid 2 · case-label 2 (whole route) · metal-floor 2 (only in a metal case)
 *     wiring     2   main-lug 4 (safety, hot joint, II) · tidy 1 (whole route)
 *     vents      1   cell-vents 4 (safety, relief blocked, I) · swollen 4 (stop, relief blocked, I)
 */
const RAW: v.InferInput<typeof checklistSchema> = {
  id: 'hut',
  version: '0.3.0',
  status: 'draft',
  title: 'Hut packs',
  fits: 'Invented packs of a mountain hut.',
  zones: [
    { id: 'enclosure', title: 'Enclosure', weight: 1 },
    { id: 'wiring', title: 'Wiring', weight: 2 },
    { id: 'vents', title: 'Vents', weight: 1 },
  ],
  hazards: [
    { id: 'hot-joint', title: 'Hot joint', harm: 'A joint glows and sets light to what is near it.' },
    { id: 'relief-blocked', title: 'Relief blocked', harm: 'A cell cannot vent and bursts.' },
  ],
  k: { high: 0.4, serious: 0.7, medium: 0.95, low: 1 },
  facts: [
    {
      id: 'metal-case',
      state: 'arrival',
      ask: 'Is the case metal?',
      choices: [
        { id: 'yes', text: 'Metal' },
        { id: 'no', text: 'Plastic' },
      ],
    },
  ],
  items: [
    item('case-lid', 'enclosure', 2, {
      title: 'Lid seal',
      grades: { sound: 'A whole bead all round.', failed: 'The lid lifts by hand.' },
      basis: [{ kind: 'ourChoice', because: 'a hand is always there.' }],
    }),
    item('case-label', 'enclosure', 2, {
      title: 'Label',
      route: 'whole',
      grades: {
        sound: 'Whole.',
        passable: 'Scuffed.',
        weak: 'Capacity above what the cells can give.',
        failed: 'None.',
      },
      mayNotApply: ['Sold without a label'],
      basis: [{ kind: 'commonPractice' }],
    }),
    item('metal-floor', 'enclosure', 2, {
      title: 'Sheet on the metal floor',
      hazard: 'hot-joint',
      severity: 3,
      onlyIf: { fact: 'metal-case', is: 'yes' },
    }),
    item('main-lug', 'wiring', 4, {
      title: 'Main lug',
      safety: true,
      hazard: 'hot-joint',
      severity: 2,
      grades: { sound: 'Full barrel.', weak: 'Loose strands.', failed: 'Strands end short of the barrel.' },
      basis: [
        { kind: 'source', source: '33 CFR 183.445(a)', sure: 'primary', bears: 'analogy' },
        { kind: 'source', source: 'Remembered clause 9.9', sure: 'memory' },
      ],
    }),
    item('tidy', 'wiring', 1, { title: 'Tidy runs', route: 'whole' }),
    item('cell-vents', 'vents', 4, {
      title: 'Cell vents',
      safety: true,
      hazard: 'relief-blocked',
      severity: 1,
      basis: [{ kind: 'source', source: 'Remembered clause 5.2', sure: 'memory' }],
    }),
    item('swollen', 'vents', 4, {
      title: 'Swollen cells',
      stop: true,
      hazard: 'relief-blocked',
      severity: 1,
      grades: { sound: 'Flat.', failed: 'Bowed over 3 mm.' },
      basis: [{ kind: 'source', source: 'UN special provision 376(c)', sure: 'secondary' }],
    }),
  ],
  remedies: [
    {
      id: 'new-lug',
      text: 'Crimp a new main lug.',
      reach: 'workshop',
      settles: [{ item: 'main-lug', leaves: 'sound' }],
    },
    {
      id: 'own-label',
      text: 'Put a true label on the case.',
      reach: 'outside',
      settles: [{ item: 'case-label', leaves: 'passable' }],
    },
  ],
};

type RawItem = (typeof RAW)['items'][number];

function item(id: string, zone: string, weight: number, given: Partial<RawItem>): RawItem {
  return {
    id,
    zone,
    kind: 'look',
    state: 'untouched',
    route: 'short',
    weight,
    title: id,
    ask: 'How is it?',
    look: 'Look at it.',
    why: 'It matters.',
    grades: { sound: 'Fine.', passable: 'Nearly fine.', weak: 'Poor.', failed: 'Bad.' },
    basis: [{ kind: 'commonPractice' }],
    ...given,
  };
}

export const HUT_CHECKLIST: Checklist = deepFreeze(v.parse(checklistSchema, RAW));

const DEVICE = 'd'.repeat(32);
/** 2026-11-24T23:30:00Z: already the 25th on a clock one hour ahead. */
export const NEWEST_MS = Date.UTC(2026, 10, 24, 23, 30);
export const stampAt = (atMs: number) => `${String(atMs).padStart(15, '0')}.000000.${DEVICE}`;

/** What the tester wrote of the lug: letters and signs that a careless typeface loses. */
export const LUG_NOTE = 'Łukasz measured 0.9 mΩ ≤ 2, bare µ-strands 35 mm², é, 60 °C → hot';

/** Main lug failed, label weak, lid not seen, vents told passable, floor excluded by the fact. */
export function hutRecord(given: Partial<PackRecord> = {}): PackRecord {
  return {
    packId: 'a'.repeat(32),
    here: true,
    demo: true,
    checklist: { id: 'hut', version: '0.3.0', sha256: 'c'.repeat(64) },
    carriedFrom: null,
    retestOf: null,
    closings: [],
    reopenings: [],
    attachments: [],
    offers: [],
    remedyNotes: {},
    takes: [],
    secondReaders: [],
    voices: [],
    sheet: { now: 'open' },
    tests: NO_LIVE_TESTS,
    route: 'whole',
    keepOriginals: false,
    nameplate: {
      name: 'Wren 24',
      sample: '1',
      maker: 'Wren Works',
      nominalVoltageV: 25.6,
      ratedCapacityAh: 100,
      cellsInSeries: 8,
      massKg: 24,
      price: 640,
      currency: 'EUR',
      pricedOn: '2026-10-01',
      obtained: 'bought',
      obtainedFrom: 'a shop',
      paysCommission: false,
    },
    answers: {
      'case-lid': { kind: 'notSeen', reason: 'Behind potting' },
      'case-label': { kind: 'grade', grade: 'weak', evidence: 'seen' },
      'main-lug': { kind: 'grade', grade: 'failed', evidence: 'measured', note: LUG_NOTE },
      tidy: { kind: 'grade', grade: 'sound', evidence: 'seen', unlooked: true },
      'cell-vents': { kind: 'grade', grade: 'passable', evidence: 'told', note: 'Says the seller.' },
      swollen: { kind: 'grade', grade: 'sound', evidence: 'measured' },
    },
    facts: { 'metal-case': 'no' },
    photos: [],
    makeSafe: [
      {
        passedAtMs: Date.UTC(2026, 10, 24, 12, 5),
        day: '2026-11-24',
        packVoltageV: 26.1,
        chargeState: 'low',
        company: 'second-person',
        coveredTerminalsPhoto: 'e'.repeat(64),
        acknowledged: ['disconnected', 'place'],
      },
    ],
    states: {
      untouched: { enteredAtMs: Date.UTC(2026, 10, 24, 12, 10), leftBehind: [] },
      apart: { enteredAtMs: Date.UTC(2026, 10, 24, 15, 0), leftBehind: ['case-lid'] },
    },
    state: 'apart',
    afterwards: { fate: 'closed-again', on: '2026-11-24' },
    words: { opinion: 'I would not sleep beside it.', signedAs: 'M. Bench' },
    newestAt: stampAt(NEWEST_MS),
    sheetAt: stampAt(NEWEST_MS),
    setAside: [],
    ...given,
  };
}

export function hutPhoto(place: number, given: Partial<RecordPhoto> = {}): RecordPhoto {
  return {
    id: String(place).padStart(64, '0'),
    zone: 'wiring',
    widthPx: 1600,
    heightPx: 1200,
    byteCount: 1000,
    originalSha256: 'f'.repeat(64),
    made: stampAt(NEWEST_MS - 1000 + place),
    itemIds: [],
    callouts: [],
    ...given,
  };
}

export function hutSheet(
  record: PackRecord = hutRecord(),
  definition: Checklist = HUT_CHECKLIST,
  given: Partial<SheetInput> = {},
): Sheet {
  return makeSheet({
    definition,
    definitionSha256: 'c'.repeat(64),
    record: deepFreeze(record),
    grading: deepFreeze(gradeRecord(definition, record)),
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 60,
    ...given,
  });
}
