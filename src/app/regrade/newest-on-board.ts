import { newestBuiltIn } from '../state/built-in-checklists.ts';
import { wasLoaded } from '../state/checklists-on-board.ts';
import { definitionByHash, type LoadedDefinition, parsedOrNull, readBuiltIn } from '../state/definitions.ts';
import { isNewerVersion } from '../state/is-newer-version.ts';
import { store } from '../state/store.ts';

/**
 * The newest version of a checklist that came with the app or was loaded by hand; null where there is none of that id. One
 * that only came with a pack in a bundle is somebody else's choice: that pack is graded by it, no other is offered it.
 */
export async function newestOnBoard(id: string): Promise<LoadedDefinition | null> {
  const file = newestBuiltIn(id);
  const named = (await store().definitions()).flatMap(({ sha256, text }) => {
    const version = versionOf(text, id);
    return version === null ? [] : [{ sha256, version }];
  });
  let newest = file === null ? null : await readBuiltIn(file);
  // Only what is newer is checked in full: a check of every kept one would take longer than all the rest.
  for (const { sha256, version } of named) {
    if (newest !== null && !isNewerVersion(version, newest.definition.version)) continue;
    if (await wasLoaded(sha256)) newest = (await definitionByHash(sha256)) ?? newest;
  }
  return newest;
}

function versionOf(text: string, id: string): string | null {
  const parsed = parsedOrNull(text);
  if (typeof parsed !== 'object' || parsed === null || !('id' in parsed) || !('version' in parsed)) return null;
  return parsed.id === id && typeof parsed.version === 'string' ? parsed.version : null;
}
