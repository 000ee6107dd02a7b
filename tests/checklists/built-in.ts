import { readFileSync } from 'node:fs';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist, Item } from '../../src/schema/checklist.ts';

export const BUILT_IN_PATH = 'checklists/lfp-drop-in/1.1.1.json';

/** The first checklist, read from its file and checked. Throws, and so fails its tests, when it is missing or refused. */
export const builtIn: Checklist = admitted(JSON.parse(readFileSync(BUILT_IN_PATH, 'utf8')));

export function builtInItem(id: string): Item {
  const item = builtIn.items.find((other) => other.id === id);
  if (item === undefined) throw new Error(`${BUILT_IN_PATH} has no item "${id}"`);
  return item;
}

function admitted(input: unknown): Checklist {
  const verdict = checkDefinition(input);
  if (verdict.ok) return verdict.definition;
  const lines = verdict.problems.map(({ place, reason }) => `${place} ${reason}`);
  throw new Error(`${BUILT_IN_PATH} is refused:\n${lines.join('\n')}`);
}
