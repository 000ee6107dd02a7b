import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sideBySide } from '../../../src/grading/side-by-side/compare.ts';
import { scoreBy } from '../../../src/grading/side-by-side/drawn-weighting.ts';
import { firmness } from '../../../src/grading/side-by-side/firmness.ts';
import type { Compared, RankGroup } from '../../../src/grading/side-by-side/side-by-side.ts';
import { doesNotApply } from '../answer-with.ts';
import { definitionArb } from '../arbitrary-definition.ts';
import { recordArb } from '../arbitrary-record.ts';
import { packOf, test } from '../live-tests/tested-pack.ts';
import { definitionWith, rawItem, smallDefinition } from '../small-definition.ts';
import { compared, smallPack } from './compared-pack.ts';

function oneGroup(packs: readonly Compared[]): RankGroup {
  const { groups } = sideBySide(packs);
  const [group] = groups;
  if (group === undefined || groups.length !== 1) throw new Error(`there must be one group, got ${groups.length}`);
  return group;
}

const standingsOf = ({ members }: RankGroup) => members.map(({ packId, rank }) => `${packId} ${rank}`);

describe('packs on one version', () => {
  // Small definition: W 1:2:1. sensor weak: bms (5 + 0.7 + 1)/8, Build 100 − 25·1.3/8 = 95.9375, II × D medium 0.95.
  // spacing failed: cells 6/9, Build 100 − 50·3/9 = 83.3333, II × C serious 0.70; the strip of a workshop clears it.
  const packs = [
    smallPack('serious', { spacing: 'failed' }),
    smallPack('fine'),
    smallPack('weak', { sensor: 'weak' }),
    smallPack('open', { sensor: null }),
    smallPack('lesser', { sensor: 'weak', tidy: 'failed' }),
  ];
  const group = oneGroup(packs);

  it('rank fine and open 1, weak 2, lesser 3, serious 4: open may be as good as fine and as bad as not as it comes', () => {
    // open: sensor failed at worst is II × C serious with no remedy for it: keep out at the low end, no finding at the
    // high end. It is tied with every other.
    expect(packs[3]?.grading.verdict).toEqual({ low: 'keepOut', high: 'noFinding', settled: false });
    expect(standingsOf(group)).toEqual(['fine 1', 'open 1', 'weak 2', 'lesser 3', 'serious 4']);
  });

  it('say of each which stand above it and which beside it', () => {
    const of = Object.fromEntries(group.members.map((member) => [member.packId, member]));
    expect(of.serious).toMatchObject({ belowPackIds: ['fine', 'weak', 'lesser'], tiedPackIds: ['open'] });
    expect(of.open).toMatchObject({ belowPackIds: [], tiedPackIds: ['serious', 'fine', 'weak', 'lesser'] });
    expect(of.fine).toMatchObject({ belowPackIds: [], tiedPackIds: ['open'], notRanked: null, settled: true });
  });

  it('have the scores 91.140625 and 58.333333 of the sums above', () => {
    const score = (packId: string) => group.members.find((member) => member.packId === packId)?.score?.low;
    expect(score('weak')).toBeCloseTo(91.140625, 9);
    expect(score('serious')).toBeCloseTo(58.3333333333, 9);
    expect(score('fine')).toBe(100);
  });

  it('are asked all 9 items, with nothing left out and the one version weighing', () => {
    expect(group).toMatchObject({ checklistId: 'small', major: 1, route: 'whole', versions: ['1.0.0'], leftOut: [] });
    expect(group.weighedBy).toBe('1.0.0');
    expect(group.commonItemIds).toEqual(smallDefinition.items.map(({ id }) => id));
  });

  it('hand the draws the zone weights, each zone and 1 serious hazard of the serious one', () => {
    expect(group.firmness?.zoneWeights).toEqual([1, 2, 1]);
    expect(group.firmness?.packs.map(({ packId }) => packId)).toEqual(packs.map(({ packId }) => packId));
    expect(group.firmness?.packs[0]).toEqual({
      packId: 'serious',
      verdict: { low: 'workshopFirst', high: 'workshopFirst', settled: true },
      score: { low: expect.closeTo(58.3333333333, 9), high: expect.closeTo(58.3333333333, 9) },
      zones: [
        { low: 1, high: 1 },
        { low: 6 / 9, high: 6 / 9 },
        { low: 1, high: 1 },
      ],
      risks: { low: { high: 0, serious: 1, medium: 0 }, high: { high: 0, serious: 1, medium: 0 } },
    });
  });

  it('are judged as their own grading judged them, to the last bit, whatever definition and answers', () => {
    const scene = definitionArb.chain((definition) =>
      fc.record({
        definition: fc.constant(definition),
        records: fc.array(recordArb(definition), { minLength: 1, maxLength: 4 }),
      }),
    );
    fc.assert(
      fc.property(scene, ({ definition, records }) => {
        const made = records.map((record, place) => compared(`pack-${place}`, record, definition));
        const { groups } = sideBySide(made);
        expect(groups.map(({ route }) => route)).toEqual([...new Set(records.map(({ route }) => route))]);
        for (const { members, firmness: input } of groups) {
          for (const { packId, build, factor, score, verdict, settled, worseOnItsOwn, rank, notRanked } of members) {
            const own = made.find((pack) => pack.packId === packId)?.grading;
            expect({ build, factor, score, verdict, settled }).toEqual({
              build: own?.build,
              factor: own?.factor,
              score: own?.score,
              verdict: own?.verdict,
              settled: own?.settled,
            });
            expect(worseOnItsOwn).toBe(false);
            expect(rank === null).toBe(own?.score === null);
            expect(notRanked).toBe(own?.stop === 'failed' ? 'stop' : own?.build ? null : 'nothingToScore');
          }
          // What the draws start from comes to the same scores at the definition's own weights and factors.
          for (const pack of input?.packs ?? []) {
            const again = scoreBy({ weights: input?.zoneWeights ?? [], k: definition.k }, pack);
            expect(again.low).toBeCloseTo(pack.score.low, 9);
            expect(again.high).toBeCloseTo(pack.score.high, 9);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

/**
 * 1.1.0: the case weighs 3, lid-fit is measured and only sound or failed, a label and tidy are no longer asked, `lugs` is
 * new under a new hazard, a serious risk leaves 0.6.
 */
const { items } = smallDefinition;
const later = definitionWith({
  version: '1.1.0',
  zones: smallDefinition.zones.map((zone) => (zone.id === 'case' ? { ...zone, weight: 3 } : zone)),
  k: { ...smallDefinition.k, serious: 0.6 },
  hazards: [...smallDefinition.hazards, { id: 'joint', title: 'joint', harm: 'Harm.' }],
  items: [
    ...items
      .filter(({ id }) => id !== 'label' && id !== 'tidy')
      .map((item) =>
        item.id === 'lid-fit'
          ? {
              ...item,
              kind: 'measure' as const,
              grades: { sound: 'S.', failed: 'F.' },
              measure: {
                inputs: [{ id: 'gap', title: 'Gap', unit: 'mm' as const, least: 0, most: 50 }],
                figure: 'value' as const,
                unit: 'mm',
                bands: { any: [{ grade: 'sound' as const, upTo: 1 }, { grade: 'failed' as const }] },
              },
            }
          : item,
      ),
    rawItem({ id: 'lugs', zone: 'bms', weight: 2, safety: true, hazard: 'joint', severity: 1 }),
  ],
});

describe('packs on 1.0.0 and 1.1.0', () => {
  const older = smallPack('older', { 'lid-fit': 'weak', spacing: 'failed', tidy: 'failed' });
  const newer = smallPack('newer', { lugs: 'failed' }, { definition: later });
  const group = oneGroup([older, newer]);
  const member = (packId: string) => group.members.find((one) => one.packId === packId);

  it('are compared on the 7 items both asked, weighed by 1.1.0', () => {
    expect(group.versions).toEqual(['1.0.0', '1.1.0']);
    expect(group.weighedBy).toBe('1.1.0');
    const common = ['lid-fit', 'vents', 'swollen', 'spacing', 'metal-floor', 'current-cut', 'sensor'];
    expect(group.commonItemIds).toEqual(common);
  });

  it('leave out lugs, asked of the newer, then the label and tidy, asked of the older', () => {
    expect(group.leftOut).toEqual([
      { itemId: 'lugs', title: 'lugs', askedPackIds: ['newer'] },
      { itemId: 'label', title: 'label', askedPackIds: ['older'] },
      { itemId: 'tidy', title: 'tidy', askedPackIds: ['older'] },
    ]);
  });

  // W 3:2:1. case: lid-fit alone 0.35 · cells 6/9 · bms 1. Build = 100·(1.05 + 1.33333 + 1)/6 = 56.388889; serious 0.6.
  it('take the look that 1.0.0 answered where 1.1.0 measures, the weights 3:2:1 and serious 0.6: 33.833333', () => {
    expect(member('older')?.build?.low).toBeCloseTo(56.3888888889, 9);
    expect(member('older')?.score?.low).toBeCloseTo(33.8333333333, 9);
    expect(member('older')?.verdict).toEqual({ low: 'workshopFirst', high: 'workshopFirst', settled: true });
    expect(member('older')?.worseOnItsOwn).toBe(false);
  });

  it('say that the newer is worse on its own: keep out, for lugs that only it was asked', () => {
    expect(newer.grading.verdict.low).toBe('keepOut');
    expect(member('newer')?.verdict.low).not.toBe('keepOut');
    expect(member('newer')?.worseOnItsOwn).toBe(true);
    // Lugs not looked at may be as bad: the low end counts.
    const open = smallPack('newer', { lugs: null }, { definition: later });
    expect(open.grading.verdict).toEqual({ low: 'keepOut', high: 'noFinding', settled: false });
    expect(oneGroup([older, open]).members.find(({ packId }) => packId === 'newer')?.worseOnItsOwn).toBe(true);
  });

  it('order versions by number, not by letter: 1.10.0 is newer than 1.9.0', () => {
    const versions = ['1.10.0', '1.9.0', '1.2.0'].map((version) =>
      smallPack(version, {}, { definition: { ...smallDefinition, version } }),
    );
    expect(oneGroup(versions)).toMatchObject({
      versions: ['1.2.0', '1.9.0', '1.10.0'],
      weighedBy: '1.10.0',
      leftOut: [],
    });
  });

  it('clear by a remedy what is left of it: the strip that settles spacing and a floor no longer asked still clears', () => {
    const without = definitionWith({
      version: '1.2.0',
      items: items.filter(({ id }) => id !== 'metal-floor'),
      remedies: smallDefinition.remedies.map((remedy) => ({
        ...remedy,
        settles: remedy.settles.filter(({ item }) => item !== 'metal-floor'),
      })),
    });
    const packs = [smallPack('a', { spacing: 'failed' }), smallPack('b', {}, { definition: without })];
    expect(oneGroup(packs).members.find(({ packId }) => packId === 'a')?.verdict.low).toBe('workshopFirst');
    const noStrip = definitionWith({ version: '1.3.0', remedies: [] });
    const others = [smallPack('a', { spacing: 'failed' }), smallPack('b', {}, { definition: noStrip })];
    expect(oneGroup(others).members.find(({ packId }) => packId === 'a')?.verdict.low).toBe('keepOut');
  });
});

describe('what only one pack can be helped by', () => {
  // Main leads for 330 A and a claim of 100 A take a fuse: tests/grading/live-tests/fuse-result.test.ts. It leaves
  // current-cut passable, so an owner alone clears the risk; while no lead is noted nothing is known to.
  it('counts for that pack alone: the fuse that fits makes one not as it comes, above the other', () => {
    const lead = { place: 'main', form: 'cable', printedAwg: '2/0', insulationDegC: 105 };
    const { nameplate, tests } = packOf({ continuousCurrentA: 100, nominalVoltageV: 12.8 }, test('lead', 1, lead));
    const group = oneGroup([
      smallPack('unknown', { 'current-cut': 'failed' }),
      smallPack('fused', { 'current-cut': 'failed' }, { nameplate, tests }),
    ]);
    const verdicts = Object.fromEntries(group.members.map(({ packId, verdict }) => [packId, verdict]));
    expect(verdicts.fused).toEqual({ low: 'notAsItComes', high: 'notAsItComes', settled: true });
    expect(verdicts.unknown).toEqual({ low: 'keepOut', high: 'notAsItComes', settled: false });
  });
});

describe('packs that are not ranked', () => {
  it('are those whose stop item failed: no score, and 1 pack less to rank', () => {
    const damaged = (packId: string) => smallPack(packId, { swollen: 'failed' });
    const four = [damaged('a'), smallPack('weak', { sensor: 'weak' }), damaged('b'), smallPack('fine')];
    expect(standingsOf(oneGroup(four))).toEqual(['fine 1', 'weak 2', 'a null', 'b null']);
    const group = oneGroup([damaged('damaged'), smallPack('fine')]);
    expect(standingsOf(group)).toEqual(['fine 1', 'damaged null']);
    expect(group.members[1]).toMatchObject({ notRanked: 'stop', score: null, belowPackIds: [], tiedPackIds: [] });
    expect(group.members[0]).toMatchObject({ belowPackIds: [], tiedPackIds: [] });
    expect(group.firmness).toBeNull();
  });

  it('are damaged also where not all were asked the stop item: 1.1.0 asks it no more', () => {
    const noStop = definitionWith({ version: '1.1.0', items: items.filter(({ id }) => id !== 'swollen') });
    const group = oneGroup([
      smallPack('damaged', { swollen: 'failed' }),
      smallPack('fine', {}, { definition: noStop }),
    ]);
    expect(group.members.map(({ packId, notRanked, score }) => [packId, notRanked, score?.low ?? null])).toEqual([
      ['fine', null, 100],
      ['damaged', 'stop', null],
    ]);
    expect(group.members[1]).toMatchObject({
      verdict: { low: 'stop', high: 'stop', settled: true },
      worseOnItsOwn: false,
    });
  });

  it('are those of which nothing applies', () => {
    const optional = definitionWith({
      items: [rawItem({ id: 'label', zone: 'case', mayNotApply: ['none'] })],
      remedies: [],
    });
    const none = compared('none', { answers: { label: doesNotApply() } }, optional);
    expect(oneGroup([none]).members[0]).toMatchObject({
      notRanked: 'nothingToScore',
      rank: null,
      build: null,
      score: null,
    });
  });
});

describe('packs that are never ranked together', () => {
  it('are a short and a whole route, two checklists, and 1.0.0 and 2.0.0: 4 groups, in the order given', () => {
    const other = definitionWith({ id: 'other' });
    const second = definitionWith({ version: '2.0.0' });
    const { groups } = sideBySide([
      smallPack('short', {}, { route: 'short' }),
      smallPack('whole'),
      smallPack('other', {}, { definition: other }),
      smallPack('second', {}, { definition: second }),
      smallPack('short too', {}, { route: 'short' }),
    ]);
    expect(groups.map(({ checklistId, major, route, members }) => [checklistId, major, route, members.length])).toEqual(
      [
        ['small', 1, 'short', 2],
        ['small', 1, 'whole', 1],
        ['other', 1, 'whole', 1],
        ['small', 2, 'whole', 1],
      ],
    );
    expect(groups[0]?.commonItemIds).toHaveLength(6);
  });
});

describe('the order', () => {
  it('does not hang on the order in which packs are given, and its first draws agree with it', () => {
    const packs = [smallPack('weak', { sensor: 'weak' }), smallPack('fine'), smallPack('poor', { spacing: 'failed' })];
    const ranks = (given: readonly Compared[]) =>
      Object.fromEntries(oneGroup(given).members.map(({ packId, rank }) => [packId, rank]));
    expect(ranks(packs)).toEqual({ fine: 1, weak: 2, poor: 3 });
    expect(ranks(packs.toReversed())).toEqual(ranks(packs));
    const input = oneGroup(packs).firmness;
    expect(input && firmness(input, { draws: 200, seed: 1 })).toMatchObject({ leads: [0, 200, 0], orderHolds: 200 });
  });
});

describe('refuses', () => {
  it('nine packs, one pack twice, and two definitions that claim to be 1.0.0', () => {
    const nine = Array.from({ length: 9 }, (_, place) => smallPack(`pack-${place}`));
    expect(() => sideBySide(nine)).toThrow(/at most 8 packs, got 9/);
    expect(sideBySide(nine.slice(1)).groups[0]?.members).toHaveLength(8);
    expect(() => sideBySide([smallPack('same'), smallPack('same')])).toThrow(/same twice/);
    const changed = definitionWith({ title: 'Changed' });
    expect(() => sideBySide([smallPack('a'), smallPack('b', {}, { definition: changed })])).toThrow(/two that differ/);
    expect(oneGroup([smallPack('a'), smallPack('b', {}, { definition: definitionWith({}) })]).versions).toEqual([
      '1.0.0',
    ]);
  });
});

it('is empty of no packs', () => {
  expect(sideBySide([])).toEqual({ groups: [], models: [] });
});
