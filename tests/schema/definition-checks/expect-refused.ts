import { expect } from 'vitest';
import { checkDefinition } from '../../../src/schema/check-definition.ts';
import type { Problem } from '../../../src/schema/definition-checks/problem.ts';
import { minimalDefinitionWith } from '../minimal-definition.ts';

export type Changes = Readonly<Record<string, unknown>>;
/** What is broken; the break; where it is said; what is said. */
export type Refusal = [name: string, changes: Changes, place: string, reason: string];

/** Everything said against the minimal definition once it is broken at some places. */
export function refusalsOf(changes: Changes): Problem[] {
  const verdict = checkDefinition(minimalDefinitionWith(changes));
  return verdict.ok ? [] : verdict.problems;
}

/** The break is said once, at its place, and nothing else is. */
export function expectRefused(changes: Changes, place: string, reason: string): void {
  expect(refusalsOf(changes)).toEqual([{ place, reason }]);
}
