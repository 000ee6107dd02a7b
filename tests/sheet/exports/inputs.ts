import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import type { Checklist } from '../../../src/schema/checklist.ts';
import type { SealInput } from '../../../src/sheet/model/sealed/sealed-text.ts';
import type { SheetInput } from '../../../src/sheet/model/sheet-context.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { CLOSED_ONCE } from '../closed-pack.ts';
import { HUT_CHECKLIST, hutPhoto, hutRecord, stampAt } from '../hut-pack.ts';
import { CHECKLIST_SHA256, DIPPER_SEAL, WREN_SEAL } from '../sealed/demo-records.ts';

export function inputOf(record: PackRecord, definition: Checklist = HUT_CHECKLIST): SheetInput {
  return deepFreeze({
    definition,
    definitionSha256: CHECKLIST_SHA256,
    record,
    grading: gradeRecord(definition, record),
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 60,
  });
}

export const demoInput = ({ packId, entries, definition }: SealInput): SheetInput =>
  inputOf(foldRecord(packId, entries), definition);

export const WREN_INPUT = demoInput(WREN_SEAL);
export const DIPPER_INPUT = demoInput(DIPPER_SEAL);

/** A leader, an outline and a cover-up on the first photo; a stroke without words on the second. */
export const CALLED_OUT = [
  hutPhoto(1, {
    itemIds: ['main-lug'],
    callouts: [
      {
        id: '1'.repeat(32),
        number: 1,
        photoId: hutPhoto(1).id,
        kind: 'leader',
        points: [
          [0.25, 0.5],
          [0.75, 0.125],
        ],
        text: '=strands end short',
        itemId: 'main-lug',
        made: stampAt(1_764_000_000_000),
      },
      {
        id: '2'.repeat(32),
        number: null,
        photoId: hutPhoto(1).id,
        kind: 'outline',
        points: [
          [0.1, 0.2],
          [0.4, 0.6],
        ],
        itemId: 'main-lug',
        made: stampAt(1_764_000_001_000),
      },
      {
        id: '3'.repeat(32),
        number: null,
        photoId: hutPhoto(1).id,
        kind: 'cover',
        points: [
          [0.5, 0.5],
          [0.9, 0.9],
        ],
        text: 'a face',
        made: stampAt(1_764_000_002_000),
      },
    ],
  }),
  hutPhoto(2, {
    itemIds: ['main-lug'],
    callouts: [
      {
        id: '4'.repeat(32),
        number: null,
        photoId: hutPhoto(2).id,
        kind: 'stroke',
        points: [
          [0, 0],
          [0.5, 0.5],
          [1, 0.25],
        ],
        made: stampAt(1_764_000_003_000),
      },
    ],
  }),
];

const hut = hutRecord();
/** Every kind of record that a file has to say something true of. */
export const ODD: Record<string, SheetInput> = {
  'an open record': inputOf(hutRecord({ photos: CALLED_OUT })),
  'a closed one': inputOf(hutRecord({ ...CLOSED_ONCE, photos: CALLED_OUT })),
  'a stop sign found': inputOf(
    hutRecord({ answers: { ...hut.answers, swollen: { kind: 'grade', grade: 'failed', evidence: 'seen' } } }),
  ),
  'nothing answered': inputOf(hutRecord({ answers: {}, facts: {}, nameplate: {}, demo: false, sheetAt: null })),
  'nothing that can apply': inputOf(hutRecord(), {
    ...HUT_CHECKLIST,
    // The case of the hut pack is not metal.
    items: HUT_CHECKLIST.items.map((item) => ({ ...item, onlyIf: { fact: 'metal-case', is: 'yes' } })),
  }),
  'nothing found': inputOf(
    hutRecord({
      answers: Object.fromEntries(
        HUT_CHECKLIST.items.map(({ id }) => [id, { kind: 'grade', grade: 'sound', evidence: 'seen' } as const]),
      ),
    }),
  ),
  'a figure that no calculation takes': inputOf(
    hutRecord({ nameplate: { ...hut.nameplate, ratedCapacityAh: Number.MIN_VALUE, nominalVoltageV: 1e9 } }),
  ),
  'the built-in checklist, unanswered': inputOf(hutRecord({ answers: {}, facts: {} }), builtIn),
  Wren: WREN_INPUT,
  Dipper: DIPPER_INPUT,
};
