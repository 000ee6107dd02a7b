import { sha256Hex } from '../../photos/sha256-hex.ts';
import type { Checklist } from '../../schema/checklist.ts';
import { BUILT_IN_FILES, type BuiltInFile, builtInText, newestBuiltIn, USUAL_ID } from './built-in-checklists.ts';
import { store } from './store.ts';

export interface LoadedDefinition {
  definition: Checklist;
  text: string;
  sha256: string;
}

const loaded = new Map<string, LoadedDefinition>();

/** The checklist a new pack begins with. Its file is part of the app and checked when the app is built. */
export async function builtInDefinition(): Promise<LoadedDefinition> {
  const usual = newestBuiltIn(USUAL_ID);
  if (usual === null) throw new Error(`the app was built without the checklist ${USUAL_ID}`);
  return readBuiltIn(usual);
}

export async function readBuiltIn(file: BuiltInFile): Promise<LoadedDefinition> {
  return definitionOf(await builtInText(file));
}

/** A definition that was loaded since the app started; null for any other. */
export function loadedDefinition(sha256: string): LoadedDefinition | null {
  return loaded.get(sha256) ?? null;
}

/**
 * The definition a record began with, by hash, from this phone or out of the app. Null when it is not here, or is one
 * that this version cannot grade by: a bundle brings what its records name, also from an earlier or a later Underlid.
 */
export async function definitionByHash(sha256: string): Promise<LoadedDefinition | null> {
  const known = loaded.get(sha256);
  if (known) return known;
  const text = await store().definitionText(sha256);
  if (text === null) return builtInByHash(sha256);
  try {
    return await definitionOf(text);
  } catch (error) {
    console.warn('checklist: one that is kept here cannot be used', error);
    return null;
  }
}

/** Only asked for what is not kept: then every file that comes with the app is read. */
async function builtInByHash(sha256: string): Promise<LoadedDefinition | null> {
  for (const file of BUILT_IN_FILES) {
    const read = await readBuiltIn(file);
    if (read.sha256 === sha256) return read;
  }
  return null;
}

/** Checks a definition's text and remembers it. Throws with every reason when it is refused. */
export async function definitionOf(text: string): Promise<LoadedDefinition> {
  const sha256 = await sha256Hex(new TextEncoder().encode(text));
  const known = loaded.get(sha256);
  if (known) return known;
  // The whole check stays out of the first load; a definition is checked once per start, before it is used.
  const { checkDefinition } = await import('../../schema/check-definition.ts');
  const checked = checkDefinition(parsedOrNull(text));
  if (!checked.ok)
    throw new Error(`checklist refused: ${checked.problems.map((p) => `${p.place}: ${p.reason}`).join('; ')}`);
  const entry = { definition: checked.definition, text, sha256 };
  loaded.set(sha256, entry);
  return entry;
}

/** Text that is no JSON becomes null, which the check refuses with its own words. */
export function parsedOrNull(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    console.warn('checklist: not JSON', error);
    return null;
  }
}
