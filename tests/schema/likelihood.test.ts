import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Item } from '../../src/schema/checklist.ts';
import { GRADES } from '../../src/schema/grade.ts';
import { likelihoodOf } from '../../src/schema/likelihood.ts';
import { minimalDefinitionWith } from './minimal-definition.ts';

/** Expected letters: DESIGN §5, "likelihood: passable none, weak D remote, failed C occasional, failed on safety B". */
describe('likelihoodOf', () => {
  it('gives a safety item none, none, D, B from sound to failed', () => {
    expect(lettersOf({})).toEqual([null, null, 'D', 'B']);
  });

  it('gives an item that is not safety none, none, D, C', () => {
    expect(lettersOf({ 'items[0].safety': false })).toEqual([null, null, 'D', 'C']);
  });

  it('lets a stated C stand at failed and leaves D at weak by the rule', () => {
    const stated = { failed: 'C', because: 'It needs a second fault.' };
    expect(lettersOf({ 'items[0].likelihood': stated })).toEqual([null, null, 'D', 'C']);
  });

  it('lets all three stated letters stand', () => {
    const stated = { passable: 'E', weak: 'C', failed: 'A', because: 'Made up.' };
    expect(lettersOf({ 'items[0].likelihood': stated })).toEqual([null, 'E', 'C', 'A']);
  });

  it('gives an item without a hazard none at all 4 grades', () => {
    const item = firstItem({});
    const { hazard: _, severity: __, ...harmless } = item;
    expect(GRADES.map((grade) => likelihoodOf(harmless, grade))).toEqual([null, null, null, null]);
  });
});

function lettersOf(changes: Readonly<Record<string, unknown>>) {
  const item = firstItem(changes);
  return GRADES.map((grade) => likelihoodOf(item, grade));
}

function firstItem(changes: Readonly<Record<string, unknown>>): Item {
  const verdict = checkDefinition(minimalDefinitionWith(changes));
  const [item] = verdict.ok ? verdict.definition.items : [];
  if (item === undefined) throw new Error(JSON.stringify(verdict));
  return item;
}
