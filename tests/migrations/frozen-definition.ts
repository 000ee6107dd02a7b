import { readFileSync } from 'node:fs';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import type { DefinitionReference } from '../../src/schema/definition-reference.ts';

/** The released definition that a reference names, as the app comes with it; checklists/released.json freezes it. */
export function frozenDefinition({ id, version }: DefinitionReference): Checklist {
  const check = checkDefinition(JSON.parse(readFileSync(`checklists/${id}/${version}.json`, 'utf8')));
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.definition;
}
