import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { graded } from './answer-with.ts';
import { definitionWith, rawItem } from './small-definition.ts';

/** Four items of one weight in one zone, each under a hazard of its own. */
const PARTS = {
  zones: [{ id: 'case', title: 'Case', weight: 1 }],
  items: [
    rawItem({ id: 'one', zone: 'case', hazard: 'relief', severity: 2 }),
    rawItem({ id: 'two', zone: 'case', hazard: 'chafe', severity: 1 }),
    rawItem({ id: 'three', zone: 'case', hazard: 'overload', severity: 2 }),
    rawItem({ id: 'four', zone: 'case', hazard: 'heat', severity: 4 }),
  ],
  remedies: [],
};

const METAL = { fact: 'metal-case', is: 'yes' };

function ledgerOf(answers: Record<string, Answer>, parts: Partial<Parameters<typeof definitionWith>[0]> = {}) {
  const definition = definitionWith({ ...PARTS, ...parts });
  return gradeRecord(definition, { route: 'short', facts: {}, answers }).ledger;
}

describe('ledger', () => {
  const findings = { one: graded('weak'), two: graded('failed'), three: graded('weak'), four: graded('failed') };

  // Build = 25·(0.35 + 0 + 0.35 + 0) = 17.5. two: I × C high 0.40; one, three: II × D medium 0.95; four: IV × C low
  // 17.5·0.6 = 10.5, leaves 7; 7·0.05 = 0.35, leaves 6.65; 6.65·0.05 = 0.3325, leaves 6.3175
  it('has factors worst first, equal ones in definition order, and none for a low risk', () => {
    expect(ledgerOf(findings)).toEqual({
      lines: [
        { itemId: 'one', lostPoints: expect.closeTo(16.25, 9), open: false },
        { itemId: 'two', lostPoints: 25, open: false },
        { itemId: 'three', lostPoints: expect.closeTo(16.25, 9), open: false },
        { itemId: 'four', lostPoints: 25, open: false },
      ],
      factors: [
        { hazardId: 'chafe', risk: 'high', k: 0.4, lostPoints: expect.closeTo(10.5, 9), open: false },
        { hazardId: 'relief', risk: 'medium', k: 0.95, lostPoints: expect.closeTo(0.35, 9), open: false },
        { hazardId: 'overload', risk: 'medium', k: 0.95, lostPoints: expect.closeTo(0.3325, 9), open: false },
      ],
    });
  });

  it('takes different risks with one k for equal factors: definition order, medium before high', () => {
    const k = { high: 0.5, serious: 0.5, medium: 0.5, low: 1 };
    expect(ledgerOf(findings, { k })?.factors.map(({ hazardId }) => hazardId)).toEqual(['relief', 'chafe', 'overload']);
  });

  // two, sound, but its fact is open: at the low end it earns nothing of its 25 points.
  it('has an item found sound under an open fact lose all its points, still open', () => {
    const items = PARTS.items.map((item) => (item.id === 'two' ? { ...item, onlyIf: METAL } : item));
    const sound = Object.fromEntries(PARTS.items.map(({ id }) => [id, graded('sound')]));
    expect(ledgerOf(sound, { items })).toEqual({ lines: [{ itemId: 'two', lostPoints: 25, open: true }], factors: [] });
  });

  it('has no line for an item that lost nothing', () => {
    const sound = Object.fromEntries(PARTS.items.map(({ id }) => [id, graded('sound')]));
    expect(ledgerOf({ ...sound, two: graded('passable') })).toEqual({
      lines: [{ itemId: 'two', lostPoints: 6.25, open: false }],
      factors: [],
    });
    expect(ledgerOf(sound)).toEqual({ lines: [], factors: [] });
  });

  it('marks what is open: the item not answered, and its hazard, at the low end', () => {
    const ledger = ledgerOf({ one: graded('weak'), two: graded('sound'), three: graded('sound') });
    expect(ledger?.lines.map(({ itemId, open }) => [itemId, open])).toEqual([
      ['one', false],
      ['four', true],
    ]);
    const stillOpen = ledgerOf({ one: graded('weak'), three: graded('sound'), four: graded('sound') });
    expect(stillOpen?.factors.map(({ hazardId, open }) => [hazardId, open])).toEqual([
      ['chafe', true],
      ['relief', false],
    ]);
  });
});
