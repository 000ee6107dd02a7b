import { describe, expect, it } from 'vitest';
import { lostOnLeaving } from '../../src/grading/lost-on-leaving.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

const early = { leaving: 'untouched', lost: 'The seal.' } as const;
const late = { leaving: 'liveOpen', lost: 'The live reading.' } as const;

const definition = definitionWith({
  remedies: [],
  items: [
    rawItem({ id: 'seal', zone: 'case', lastChance: early }),
    rawItem({ id: 'routing', zone: 'case', lastChance: early, photo: 'always' }),
    rawItem({ id: 'dust', zone: 'case', lastChance: early, photo: 'none', route: 'whole' }),
    rawItem({ id: 'floor', zone: 'case', lastChance: early, onlyIf: { fact: 'metal-case', is: 'yes' } }),
    rawItem({ id: 'reading', zone: 'cells', lastChance: late, mayNotApply: ['no port'] }),
    rawItem({ id: 'lasting', zone: 'cells' }),
  ],
});

type Scene = Partial<Parameters<typeof lostOnLeaving>[1]> & Partial<Parameters<typeof lostOnLeaving>[2]>;

function lost({ answers = {}, facts = {}, route = 'whole', state = 'untouched', photoItemIds = new Set() }: Scene) {
  const record = deepFreeze({ answers, facts, route });
  return lostOnLeaving(definition, record, { state, photoItemIds });
}

const ids = (scene: Scene) => lost(scene).map(({ itemId }) => itemId);

describe('before you disturb it', () => {
  it('names the four open items whose last chance is the untouched pack, with what is lost', () => {
    expect(lost({})).toEqual([
      { itemId: 'seal', lost: 'The seal.', needsPhoto: false, open: true },
      { itemId: 'routing', lost: 'The seal.', needsPhoto: false, open: true },
      { itemId: 'dust', lost: 'The seal.', needsPhoto: false, open: true },
      { itemId: 'floor', lost: 'The seal.', needsPhoto: false, open: true },
    ]);
  });

  it('names on leaving a later state what went with an earlier one too', () => {
    expect(ids({ state: 'liveOpen' })).toEqual(['seal', 'routing', 'dust', 'floor', 'reading']);
    expect(ids({ state: 'apart' })).toEqual(['seal', 'routing', 'dust', 'floor', 'reading']);
  });

  it('leaves out what the short route does not ask and what a fact excludes', () => {
    expect(ids({ route: 'short', facts: { 'metal-case': 'no' } })).toEqual(['seal', 'routing']);
  });

  it('still names what was not seen, and what was graded under an open fact', () => {
    const answers = { seal: notSeen(), routing: graded('sound'), dust: graded('sound'), floor: graded('sound') };
    expect(ids({ answers, photoItemIds: new Set(['routing']) })).toEqual(['seal', 'floor']);
  });

  it.each([
    ['seal', 'sound', []],
    ['seal', 'passable', []],
    ['seal', 'weak', ['seal']],
    ['seal', 'failed', ['seal']],
    ['routing', 'sound', ['routing']],
    ['dust', 'failed', []],
  ] as const)('wants a photo of %s graded %s: %j', (id, grade, wanted) => {
    const scene = { answers: { [id]: graded(grade) }, facts: { 'metal-case': 'no' } };
    const photos = lost(scene).filter(({ needsPhoto }) => needsPhoto);
    expect(photos.map(({ itemId, open }) => [itemId, open])).toEqual(wanted.map((itemId) => [itemId, false]));
    expect(lost({ ...scene, photoItemIds: new Set([id]) }).some(({ needsPhoto }) => needsPhoto)).toBe(false);
  });

  it('wants nothing of an item that does not apply', () => {
    expect(ids({ state: 'liveOpen', answers: { reading: doesNotApply() } })).not.toContain('reading');
  });
});
