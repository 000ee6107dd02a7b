import type { Checklist } from './checklist.ts';
import { checkCredits } from './definition-checks/credits.ts';
import { checkFactors } from './definition-checks/factors.ts';
import { checkFigures } from './definition-checks/figures.ts';
import { checkIds } from './definition-checks/ids.ts';
import { checkItemBands } from './definition-checks/item-bands.ts';
import { checkItemGrades } from './definition-checks/item-grades.ts';
import { checkItemHazards } from './definition-checks/item-hazards.ts';
import { checkNames } from './definition-checks/names.ts';
import { checkNotApplying } from './definition-checks/not-applying.ts';
import { checkPlaces } from './definition-checks/places.ts';
import type { DefinitionCheck, Problem } from './definition-checks/problem.ts';
import { checkRemedies } from './definition-checks/remedies.ts';
import { definitionShape } from './definition-checks/shape.ts';
import { checkShortRoute } from './definition-checks/short-route.ts';

export type DefinitionVerdict = { ok: true; definition: Checklist } | { ok: false; problems: Problem[] };

const CHECKS: readonly DefinitionCheck[] = [
  checkIds,
  checkNames,
  checkPlaces,
  checkCredits,
  checkFactors,
  checkFigures,
  checkItemGrades,
  checkItemHazards,
  checkItemBands,
  checkNotApplying,
  checkShortRoute,
  checkRemedies,
];

/**
 * Checks a checklist definition as it comes from a file: its shape first, then everything the shape cannot say. All
 * problems are named at once, those of the shape alone while it is wrong. An admitted definition has its defaults
 * filled in.
 *
 * Source  DESIGN §4
 * Check   tests/schema/check-definition.test.ts
 */
export function checkDefinition(input: unknown): DefinitionVerdict {
  const shape = definitionShape(input);
  if (Array.isArray(shape)) return { ok: false, problems: shape };
  const problems = CHECKS.flatMap((check) => check(shape));
  return problems.length === 0 ? { ok: true, definition: shape } : { ok: false, problems };
}
