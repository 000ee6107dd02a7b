import * as v from 'valibot';
import { type Checklist, checklistSchema } from '../../src/schema/checklist.ts';
import { deepFreeze } from './deep-freeze.ts';

type RawChecklist = v.InferInput<typeof checklistSchema>;
type RawItem = RawChecklist['items'][number];

const FOUR = { sound: 'S.', passable: 'P.', weak: 'W.', failed: 'F.' };
const THREE = { sound: 'S.', weak: 'W.', failed: 'F.' };
const TWO = { sound: 'S.', failed: 'F.' };

/** An item with plain words; the fields that matter to a test are given. */
export function rawItem(given: Partial<RawItem> & Pick<RawItem, 'id' | 'zone'>): RawItem {
  return {
    kind: 'look',
    state: 'untouched',
    route: 'short',
    weight: 1,
    title: given.id,
    ask: 'How is it?',
    look: 'Look at it.',
    why: 'It matters.',
    grades: FOUR,
    basis: [{ kind: 'commonPractice' }],
    ...given,
  };
}

/**
 * Nine items in three zones, small enough to grade by hand.
 *
 *     zone  W   items (weight; severity and hazard)
 *     case  1   lid-fit 2 · label 1 whole route, may not apply
 *     cells 2   vents 4 safety I relief · swollen 2 stop · spacing 3 II chafe · metal-floor 1 whole, only in a metal
 *               case, III chafe
 *     bms   1   current-cut 5 safety II overload · sensor 2 safety II heat, failed = C (stated) · tidy 1 whole
 */
const RAW = {
  id: 'small',
  version: '1.0.0',
  status: 'draft',
  title: 'Small',
  fits: 'Nothing real.',
  zones: [
    { id: 'case', title: 'Case', weight: 1 },
    { id: 'cells', title: 'Cells', weight: 2 },
    { id: 'bms', title: 'BMS', weight: 1 },
  ],
  hazards: ['relief', 'chafe', 'overload', 'heat'].map((id) => ({ id, title: id, harm: 'Harm.' })),
  k: { high: 0.4, serious: 0.7, medium: 0.95, low: 1 },
  facts: [
    {
      id: 'metal-case',
      state: 'arrival',
      ask: 'Metal case?',
      choices: [
        { id: 'yes', text: 'Yes' },
        { id: 'no', text: 'No' },
      ],
    },
  ],
  items: [
    rawItem({ id: 'lid-fit', zone: 'case', weight: 2 }),
    rawItem({ id: 'label', zone: 'case', route: 'whole', grades: THREE, mayNotApply: ['no label is fitted'] }),
    rawItem({ id: 'vents', zone: 'cells', weight: 4, safety: true, hazard: 'relief', severity: 1 }),
    rawItem({ id: 'swollen', zone: 'cells', weight: 2, stop: true, grades: TWO }),
    rawItem({ id: 'spacing', zone: 'cells', weight: 3, hazard: 'chafe', severity: 2 }),
    rawItem({
      id: 'metal-floor',
      zone: 'cells',
      route: 'whole',
      grades: THREE,
      hazard: 'chafe',
      severity: 3,
      onlyIf: { fact: 'metal-case', is: 'yes' },
    }),
    rawItem({ id: 'current-cut', zone: 'bms', weight: 5, safety: true, hazard: 'overload', severity: 2 }),
    rawItem({
      id: 'sensor',
      zone: 'bms',
      weight: 2,
      safety: true,
      hazard: 'heat',
      severity: 2,
      likelihood: { failed: 'C', because: 'It needs a second fault.' },
    }),
    rawItem({ id: 'tidy', zone: 'bms', route: 'whole' }),
  ],
  remedies: [
    {
      id: 'terminal-fuse',
      text: 'Fit a fuse.',
      reach: 'outside',
      needs: 'fuseFits',
      settles: [{ item: 'current-cut', leaves: 'passable' }],
    },
    { id: 'lid-screws', text: 'Fit screws.', reach: 'outside', settles: [{ item: 'lid-fit', leaves: 'sound' }] },
    {
      id: 'edge-strip',
      text: 'Fit a strip.',
      reach: 'workshop',
      settles: [
        { item: 'spacing', leaves: 'passable' },
        { item: 'metal-floor', leaves: 'sound' },
      ],
    },
    { id: 'clear-vents', text: 'Clear.', reach: 'workshop', settles: [{ item: 'vents', leaves: 'passable' }] },
  ],
} satisfies RawChecklist;

export const smallDefinition: Checklist = deepFreeze(v.parse(checklistSchema, RAW));

/** The small definition with some parts replaced, defaults filled in. */
export function definitionWith(parts: Partial<RawChecklist>): Checklist {
  return deepFreeze(v.parse(checklistSchema, { ...RAW, ...parts }));
}
