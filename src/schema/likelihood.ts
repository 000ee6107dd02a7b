import type { Item, Likelihood } from './checklist.ts';
import type { Grade } from './grade.ts';

/**
 * How likely harm is once an item has this grade; null where the grade leads to no harm.
 *
 * The rule is our choice, because the grade is what a person can see and a rate is not: passable none, weak D remote,
 * failed C occasional, failed on a safety item B probable. What the definition states for the item wins over the rule.
 * An item without a hazard has no likelihood at any grade.
 *
 * Source  letters: MIL-STD-882E Table II; their link to the grade: our choice
 * Check   tests/schema/likelihood.test.ts
 */
export function likelihoodOf(item: Item, grade: Grade): Likelihood | null {
  if (item.hazard === undefined || grade === 'sound') return null;
  return item.likelihood?.[grade] ?? byRule(item.safety, grade);
}

function byRule(safety: boolean, grade: Exclude<Grade, 'sound'>): Likelihood | null {
  if (grade === 'passable') return null;
  if (grade === 'weak') return 'D';
  return safety ? 'B' : 'C';
}
