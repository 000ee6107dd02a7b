import { describe, expect, it } from 'vitest';
import { itemRisk } from '../../src/grading/item-risk.ts';
import type { Item } from '../../src/schema/checklist.ts';
import { definitionWith, rawItem, smallDefinition } from './small-definition.ts';

/** DESIGN §5: weak D, failed C, failed on a safety item B; levels from MIL-STD-882E Table III. */
describe('risk of an item at a grade', () => {
  it.each([
    ['spacing', 'weak', 'D', 'medium'], // II × D
    ['spacing', 'failed', 'C', 'serious'], // II × C
    ['vents', 'weak', 'D', 'serious'], // I × D
    ['vents', 'failed', 'B', 'high'], // safety: I × B
    ['current-cut', 'failed', 'B', 'high'], // safety: II × B
    ['sensor', 'failed', 'C', 'serious'], // safety, but C is stated: II × C
    ['metal-floor', 'failed', 'C', 'medium'], // III × C
  ] as const)('of %s graded %s is at likelihood %s: %s', (id, grade, likelihood, risk) => {
    expect(itemRisk(itemOf(id), grade)).toMatchObject({ likelihood, risk });
  });

  it.each(['sound', 'passable'] as const)('is none for %s', (grade) => {
    expect(itemRisk(itemOf('vents'), grade)).toBeNull();
  });

  it('is none without a hazard, even when failed', () => {
    expect(itemRisk(itemOf('swollen'), 'failed')).toBeNull();
  });

  it('is none for passable even where a likelihood is stated for it: a finding is weak or failed', () => {
    const raw = rawItem({
      id: 'only',
      zone: 'case',
      hazard: 'heat',
      severity: 1,
      likelihood: { passable: 'D', because: 'Stated.' },
    });
    const item = definitionWith({ items: [raw], remedies: [] }).items[0];
    if (item === undefined) throw new Error('one item was given');
    expect(itemRisk(item, 'passable')).toBeNull();
  });

  it('takes a stated likelihood over the rule at every grade: weak C on severity II is serious', () => {
    const raw = rawItem({
      id: 'only',
      zone: 'case',
      hazard: 'heat',
      severity: 2,
      likelihood: { weak: 'C', because: 'Seen often.' },
    });
    const item = definitionWith({ items: [raw], remedies: [] }).items[0];
    if (item === undefined) throw new Error('one item was given');
    expect(itemRisk(item, 'weak')).toEqual({ hazardId: 'heat', severity: 2, likelihood: 'C', risk: 'serious' });
  });
});

function itemOf(id: string): Item {
  const item = smallDefinition.items.find((one) => one.id === id);
  if (item === undefined) throw new Error(`no such item: ${id}`);
  return item;
}
