import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist, Item } from '../../src/schema/checklist.ts';
import { definitionFiles } from './definition-files.ts';

/** A definition by "id/version", read from its file and checked. Throws, and so fails its tests, when it is missing or refused. */
export function admittedFile(name: string): Checklist {
  const file = definitionFiles().find((one) => one.name === name);
  if (file === undefined) throw new Error(`there is no checklists/${name}.json`);
  const verdict = checkDefinition(JSON.parse(file.text));
  if (verdict.ok) return verdict.definition;
  throw new Error(
    `${name} is refused:\n${verdict.problems.map(({ place, reason }) => `${place} ${reason}`).join('\n')}`,
  );
}

export function itemOf({ id, version, items }: Checklist, itemId: string): Item {
  const item = items.find((one) => one.id === itemId);
  if (item === undefined) throw new Error(`${id} ${version} has no item "${itemId}"`);
  return item;
}
