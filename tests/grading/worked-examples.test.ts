import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading, NextQuestion, Range } from '../../src/grading/grading.ts';
import { lookHereNext } from '../../src/grading/look-here-next.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { itemTable } from './item-table.ts';
import { smallDefinition } from './small-definition.ts';

/** Every expected number is worked by hand in the comment above it, from DESIGN §5 and the table of small-definition. */

describe('a serious finding that only a workshop clears', () => {
  const answers: Record<string, Answer> = {
    'lid-fit': graded('sound'),
    label: doesNotApply('no label is fitted'),
    vents: graded('sound'),
    swollen: graded('sound'),
    spacing: graded('failed'),
    'current-cut': graded('passable', 'measured'),
    sensor: graded('weak'),
    tidy: graded('sound'),
  };
  const grading = grade({ route: 'whole', facts: { 'metal-case': 'no' }, answers });

  it('has all 9 items settled, the label and the metal floor as not applying', () => {
    expect(itemTable(grading)).toEqual({
      'lid-fit': 'answered: sound',
      label: 'doesNotApply: doesNotApply',
      vents: 'answered: sound',
      swollen: 'answered: sound',
      spacing: 'answered: failed',
      'metal-floor': 'factExcludes: doesNotApply',
      'current-cut': 'answered: passable',
      sensor: 'answered: weak',
      tidy: 'answered: sound',
    });
    expect(grading.settled).toBe(true);
    expect(grading.settledCount).toBe(9);
    expect(grading.settledShareFrac).toBe(1);
    expect(grading.lookHereNext).toBeNull();
  });

  // case 2/2 = 1 · cells (4 + 2 + 3·0)/9 = 6/9 · bms (5·0.75 + 2·0.35 + 1)/8 = 5.45/8 = 0.68125; W 1:2:1
  // Build = 25 + 50·6/9 + 25·0.68125 = 25 + 33.3333 + 17.03125 = 75.364583
  // spacing failed, not safety: C; II × C = serious 0.70 · sensor weak: D; II × D = medium 0.95; factor 0.665
  // Score = 75.364583 · 0.665 = 50.117448
  it('builds 75.364583, keeps the factor 0.665 and scores 50.117448', () => {
    expectOne(grading.build, 75.3645833333);
    expectOne(grading.factor, 0.665);
    expectOne(grading.score, 50.1174479167);
    expect(grading.zones.map(({ q }) => q?.low)).toEqual([1, expect.closeTo(2 / 3, 12), expect.closeTo(0.68125, 12)]);
    expect(grading.zones.map(({ weightFrac }) => weightFrac)).toEqual([0.25, 0.5, 0.25]);
    expect(grading.zones.map(({ worst }) => worst)).toEqual(['sound', 'failed', 'weak']);
  });

  it('puts chafe at serious and heat at medium, and no other hazard at anything', () => {
    expect(grading.hazards).toEqual([
      { hazardId: 'relief', risk: { low: null, high: null }, k: { low: 1, high: 1 }, itemIds: [] },
      {
        hazardId: 'chafe',
        risk: { low: 'serious', high: 'serious' },
        k: { low: 0.7, high: 0.7 },
        itemIds: ['spacing'],
      },
      { hazardId: 'overload', risk: { low: null, high: null }, k: { low: 1, high: 1 }, itemIds: [] },
      { hazardId: 'heat', risk: { low: 'medium', high: 'medium' }, k: { low: 0.95, high: 0.95 }, itemIds: ['sensor'] },
    ]);
  });

  // The only listed remedy is the strip (current-cut is passable already, the lid sound, the vents sound).
  // Outside: nothing, 50.117448. Workshop: cells (4 + 2 + 3·0.75)/9 = 8.25/9; Build = 25 + 45.8333 + 17.03125
  // = 87.864583; factor 0.95; 83.471354. Gain 33.353906 = 12.5·0.665 (8.3125) + 87.864583·(0.95 − 0.665) (25.041406)
  it('is workshop first: the strip gains 33.353906, of which 25.041406 by chafe, and leads to 83.471354', () => {
    expect(grading.verdict).toEqual({ low: 'workshopFirst', high: 'workshopFirst', settled: true });
    expectOne(grading.after.outside, 50.1174479167);
    expectOne(grading.after.workshop, 83.4713541667);
    expect(grading.remedies).toEqual([
      {
        remedyId: 'edge-strip',
        reach: 'workshop',
        itemIds: ['spacing'],
        gain: near(33.35390625),
        buildGain: near(8.3125),
        hazardGains: [{ hazardId: 'chafe', gain: near(25.04140625) }],
        cumulative: near(83.4713541667),
        clearsHazardIds: ['chafe'],
      },
    ]);
  });

  it('lists two findings, the serious one first', () => {
    expect(grading.findings).toEqual([
      {
        itemId: 'spacing',
        zoneId: 'cells',
        grade: 'failed',
        sure: true,
        hazardId: 'chafe',
        severity: 2,
        likelihood: 'C',
        risk: 'serious',
        lostPoints: expect.closeTo(50 / 3, 9),
      },
      {
        itemId: 'sensor',
        zoneId: 'bms',
        grade: 'weak',
        sure: true,
        hazardId: 'heat',
        severity: 2,
        likelihood: 'D',
        risk: 'medium',
        lostPoints: expect.closeTo(4.0625, 9),
      },
    ]);
  });

  // spacing 50·3/9 = 16.6667 · current-cut 25·5·0.25/8 = 3.90625 · sensor 25·2·0.65/8 = 4.0625; sum 24.635417
  // chafe 75.364583·0.30 = 22.609375, leaves 52.755208; heat 5 % of that = 2.637760, leaves 50.117448
  it('accounts for 24.635417 lost points of Build, then 22.609375 by chafe and 2.637760 by heat', () => {
    expect(grading.ledger).toEqual({
      lines: [
        { itemId: 'spacing', lostPoints: expect.closeTo(50 / 3, 9), open: false },
        { itemId: 'current-cut', lostPoints: expect.closeTo(3.90625, 9), open: false },
        { itemId: 'sensor', lostPoints: expect.closeTo(4.0625, 9), open: false },
      ],
      factors: [
        { hazardId: 'chafe', risk: 'serious', k: 0.7, lostPoints: expect.closeTo(22.609375, 9), open: false },
        { hazardId: 'heat', risk: 'medium', k: 0.95, lostPoints: expect.closeTo(2.6377604167, 9), open: false },
      ],
    });
  });
});

describe('a safety item still open', () => {
  const answers: Record<string, Answer> = {
    'lid-fit': graded('passable'),
    label: graded('weak'),
    vents: notSeen(),
    swollen: graded('sound'),
    spacing: graded('sound'),
    'metal-floor': graded('weak'),
    'current-cut': graded('sound', 'told'),
    sensor: graded('sound'),
    tidy: graded('failed'),
  };
  const grading = grade({ route: 'whole', facts: { 'metal-case': 'yes' }, answers });

  it('has 8 of 9 items settled, the told current cut-off at passable', () => {
    expect(itemTable(grading)).toEqual({
      'lid-fit': 'answered: passable',
      label: 'answered: weak',
      vents: 'notSeen: sound passable weak failed',
      swollen: 'answered: sound',
      spacing: 'answered: sound',
      'metal-floor': 'answered: weak',
      'current-cut': 'answered: passable',
      sensor: 'answered: sound',
      tidy: 'answered: failed',
    });
    expect(grading.items.filter(({ loweredByTold }) => loweredByTold).map(({ itemId }) => itemId)).toEqual([
      'current-cut',
    ]);
    expect(grading.openSafetyItemIds).toEqual(['vents']);
    expect(grading.settled).toBe(false);
    expect(grading.settledCount).toBe(8);
    // 0.25 + 0.5·6/10 + 0.25
    expect(grading.settledShareFrac).toBeCloseTo(0.8, 12);
  });

  // case (2·0.75 + 0.35)/3 = 1.85/3 · cells low (0 + 2 + 3 + 0.35)/10 = 0.535, high 0.935 · bms (3.75 + 2 + 0)/8
  // Build low 15.416667 + 26.75 + 17.96875 = 60.135417, high 80.135417
  // metal floor weak: III × D = medium 0.95 · vents failed, safety: I × B = high 0.40 at the low end, none at the high
  // Score low 60.135417·0.38 = 22.851458, high 80.135417·0.95 = 76.128646
  it('ranges from 22.851458 to 76.128646', () => {
    expect(grading.build).toEqual({
      low: expect.closeTo(60.1354166667, 9),
      high: expect.closeTo(80.1354166667, 9),
    });
    expect(grading.factor).toEqual({ low: expect.closeTo(0.38, 12), high: expect.closeTo(0.95, 12) });
    expect(grading.score).toEqual({
      low: expect.closeTo(22.8514583333, 9),
      high: expect.closeTo(76.1286458333, 9),
    });
  });

  // Low end: vents at high, cleared by the workshop. High end: a medium risk and a failed item.
  it('is unsettled between workshop first and mind the list', () => {
    expect(grading.verdict).toEqual({ low: 'workshopFirst', high: 'mindTheList', settled: false });
    expect(grading.stop).toBe('none');
  });

  // lid 25·(2.35 − 1.85)/3 = 4.166667 → Build 64.302083 / 84.302083 → 24.434792 / 80.086979; gain 1.583333 / 3.958333
  // vents at worst passable: + 50·3/10 → 79.302083·0.95 = 75.336979; nothing at the high end
  // strip: + 50·0.65/10 = 3.25 → 82.552083 / 87.552083 at factor 1
  it('prints lid screws, then cleared vents, then the strip, up to 82.552083–87.552083', () => {
    expect(grading.remedies.map(({ remedyId, gain, cumulative }) => ({ remedyId, gain, cumulative }))).toEqual([
      {
        remedyId: 'lid-screws',
        gain: near(1.5833333333, 3.9583333333),
        cumulative: near(24.4347916667, 80.0869791667),
      },
      { remedyId: 'clear-vents', gain: near(50.9021875, 0), cumulative: near(75.3369791667, 80.0869791667) },
      {
        remedyId: 'edge-strip',
        gain: near(7.2151041667, 7.4651041667),
        cumulative: near(82.5520833333, 87.5520833333),
      },
    ]);
    expect(grading.after).toEqual({
      outside: near(24.4347916667, 80.0869791667),
      workshop: near(82.5520833333, 87.5520833333),
    });
  });

  // Lost at the low end: lid 25·2·0.25/3 = 4.166667 · label 25·0.65/3 = 5.416667 · vents 50·4/10 = 20
  // metal floor 50·0.65/10 = 3.25 · current-cut 25·5·0.25/8 = 3.90625 · tidy 25/8 = 3.125; sum 39.864583
  // relief 60.135417·0.6 = 36.08125, leaves 24.054167; chafe 5 % of it = 1.202708, leaves 22.851458
  it('keeps the low end’s ledger, vents and relief still open', () => {
    expect(grading.ledger?.lines).toEqual([
      { itemId: 'lid-fit', lostPoints: expect.closeTo(4.1666666667, 9), open: false },
      { itemId: 'label', lostPoints: expect.closeTo(5.4166666667, 9), open: false },
      { itemId: 'vents', lostPoints: expect.closeTo(20, 9), open: true },
      { itemId: 'metal-floor', lostPoints: expect.closeTo(3.25, 9), open: false },
      { itemId: 'current-cut', lostPoints: expect.closeTo(3.90625, 9), open: false },
      { itemId: 'tidy', lostPoints: expect.closeTo(3.125, 9), open: false },
    ]);
    expect(grading.ledger?.factors).toEqual([
      { hazardId: 'relief', risk: 'high', k: 0.4, lostPoints: expect.closeTo(36.08125, 9), open: true },
      { hazardId: 'chafe', risk: 'medium', k: 0.95, lostPoints: expect.closeTo(1.2027083333, 9), open: false },
    ]);
  });

  it('looks at the vents next, which settles everything: narrower by 53.277188', () => {
    expect(grading.lookHereNext).toEqual({
      kind: 'item',
      id: 'vents',
      meanVerdictSteps: 0,
      meanWidthPoints: 0,
      narrowsByPoints: expect.closeTo(53.2771875, 9),
    });
  });
});

describe('a short route', () => {
  const answers: Record<string, Answer> = {
    'lid-fit': graded('weak'),
    vents: graded('passable'),
    swollen: graded('sound'),
    spacing: graded('passable'),
    'current-cut': graded('failed', 'measured'),
    sensor: graded('passable', 'told'),
    tidy: graded('failed'),
  };
  const grading = grade({ route: 'short', facts: {}, answers });

  it('asks 6 of 9 items and is settled though a fact and three items are not asked', () => {
    expect(itemTable(grading)).toEqual({
      'lid-fit': 'answered: weak',
      label: 'notAsked: ',
      vents: 'answered: passable',
      swollen: 'answered: sound',
      spacing: 'answered: passable',
      'metal-floor': 'notAsked: ',
      'current-cut': 'answered: failed',
      sensor: 'answered: passable',
      tidy: 'notAsked: ',
    });
    expect([grading.askedCount, grading.itemCount, grading.settledCount]).toEqual([6, 9, 6]);
    expect(grading.zones.map(({ askedCount }) => askedCount)).toEqual([1, 3, 2]);
    expect(grading.settled).toBe(true);
    expect(grading.lookHereNext).toBeNull();
  });

  // case 0.35 · cells (4·0.75 + 2 + 3·0.75)/9 = 7.25/9 · bms (0 + 2·0.75)/7 = 1.5/7
  // Build = 8.75 + 40.277778 + 5.357143 = 54.384921; current-cut failed, safety: II × B = high 0.40
  // Score = 21.753968
  it('scores 54.384921 · 0.40 = 21.753968', () => {
    expectOne(grading.build, 54.3849206349);
    expectOne(grading.factor, 0.4);
    expectOne(grading.score, 21.753968254);
  });

  // lid screws: + 25·0.65 = 16.25 → 70.634921·0.4 = 28.253968. Fuse: + 25·3.75/7 = 13.392857 → 84.027778 at factor 1
  it('counts a fuse not yet known to fit at the high end only: 28.253968–84.027778, unsettled', () => {
    expect(grading.after.outside).toEqual(near(28.253968254, 84.0277777778));
    expect(grading.after.workshop).toEqual(near(28.253968254, 84.0277777778));
    expect(grading.verdict).toEqual({ low: 'keepOut', high: 'notAsItComes', settled: false });
    expect(grading.remedies.map(({ remedyId, open, clearsHazardIds }) => [remedyId, open, clearsHazardIds])).toEqual([
      ['lid-screws', undefined, []],
      ['terminal-fuse', 'fuseFits', ['overload']],
    ]);
  });

  it('is not as it comes once a fuse is known to fit, 84.027778 after it', () => {
    const fits = gradeRecord(smallDefinition, { route: 'short', facts: {}, answers }, { fuseFits: true });
    expect(fits.verdict).toEqual({ low: 'notAsItComes', high: 'notAsItComes', settled: true });
    expectOne(fits.after.outside, 84.0277777778);
    // The fuse alone: 67.777778 − 21.753968 = 46.023810, more than the lid screws' 6.5: it is printed first.
    expect(fits.remedies.map(({ remedyId, gain }) => [remedyId, gain])).toEqual([
      ['terminal-fuse', near(46.0238095238)],
      ['lid-screws', near(16.25)],
    ]);
  });

  it('is to be kept out of use once no fuse is found to fit: the remedy stays listed and gains 0', () => {
    const none = gradeRecord(smallDefinition, { route: 'short', facts: {}, answers }, { fuseFits: false });
    expect(none.verdict).toEqual({ low: 'keepOut', high: 'keepOut', settled: true });
    expectOne(none.after.workshop, 28.253968254);
    expect(none.remedies.map(({ remedyId, gain, ruledOut }) => [remedyId, gain, ruledOut])).toEqual([
      ['lid-screws', near(6.5), undefined],
      ['terminal-fuse', { low: 0, high: 0 }, 'fuseFits'],
    ]);
  });
});

describe('a failed stop item', () => {
  const answers: Record<string, Answer> = {
    'lid-fit': graded('sound'),
    vents: graded('failed'),
    swollen: graded('failed'),
    'current-cut': graded('sound'),
  };
  const grading = grade({ route: 'whole', facts: { 'metal-case': 'yes' }, answers });

  it('keeps what is known of all 9 items', () => {
    expect(itemTable(grading)).toEqual({
      'lid-fit': 'answered: sound',
      label: 'unanswered: sound weak failed doesNotApply',
      vents: 'answered: failed',
      swollen: 'answered: failed',
      spacing: 'unanswered: sound passable weak failed',
      'metal-floor': 'unanswered: sound weak failed',
      'current-cut': 'answered: sound',
      sensor: 'unanswered: sound passable weak failed',
      tidy: 'unanswered: sound passable weak failed',
    });
  });

  it('says stop at both ends and withholds score, range, after-scores, ledger and next question', () => {
    expect(grading.stop).toBe('failed');
    expect(grading.verdict).toEqual({ low: 'stop', high: 'stop', settled: true });
    expect(grading.score).toBeNull();
    expect(grading.after).toEqual({ outside: null, workshop: null });
    expect(grading.remedies).toEqual([]);
    expect(grading.ledger).toBeNull();
    expect(grading.lookHereNext).toBeNull();
  });

  // case low 2/3, high 1 · cells low 0, high (3 + 1)/10 = 0.4 · bms low 5/8, high 1
  it('keeps its zones and its two findings, the one under a hazard first', () => {
    expect(grading.zones.map(({ q }) => q)).toEqual([near(2 / 3, 1), near(0, 0.4), near(0.625, 1)]);
    expect(grading.findings.map(({ itemId, risk, lostPoints }) => [itemId, risk, lostPoints])).toEqual([
      ['vents', 'high', expect.closeTo(20, 9)],
      ['swollen', null, expect.closeTo(10, 9)],
    ]);
  });
});

describe('the same pack while the stop item is only possible', () => {
  const answers: Record<string, Answer> = {
    'lid-fit': graded('sound'),
    label: graded('sound'),
    vents: graded('sound'),
    swollen: notSeen(),
    spacing: graded('sound'),
    'current-cut': graded('sound'),
    sensor: graded('sound'),
    tidy: graded('sound'),
  };
  const grading = grade({ route: 'whole', facts: { 'metal-case': 'no' }, answers });

  // cells low (4 + 0 + 3)/9 = 7/9: Build 25 + 38.888889 + 25 = 88.888889
  it('shows the range 88.888889–100 and says stop at the low end, no finding at the high one', () => {
    expect(grading.stop).toBe('possible');
    expect(grading.score).toEqual(near(88.8888888889, 100));
    expect(grading.verdict).toEqual({ low: 'stop', high: 'noFinding', settled: false });
    expect(grading.ledger?.lines).toEqual([{ itemId: 'swollen', lostPoints: expect.closeTo(100 / 9, 9), open: true }]);
  });
});

/** The grading, and beside it the question to look at next. */
function grade(record: Parameters<typeof gradeRecord>[1]): Grading & { lookHereNext: NextQuestion | null } {
  const frozen = deepFreeze(record);
  return { ...gradeRecord(smallDefinition, frozen), lookHereNext: lookHereNext(smallDefinition, frozen) };
}

function expectOne(range: Range | null, value: number): void {
  expect(range?.low).toBe(range?.high);
  expect(range?.low).toBeCloseTo(value, 9);
}

function near(low: number, high = low) {
  return { low: expect.closeTo(low, 9), high: expect.closeTo(high, 9) };
}
