import { builtInDefinition, definitionByHash, type LoadedDefinition, parsedOrNull } from '../state/definitions.ts';
import { isNewerVersion } from '../state/is-newer-version.ts';
import { store } from '../state/store.ts';

/** The newest version of a checklist that this phone has, built in or loaded; null where it has none of that id. */
export async function newestOnBoard(id: string): Promise<LoadedDefinition | null> {
  const [builtIn, kept] = await Promise.all([builtInDefinition(), store().definitions()]);
  const named = kept.flatMap(({ sha256, text }) => {
    const version = versionOf(text, id);
    return version === null ? [] : [{ sha256, version }];
  });
  let newest = builtIn.definition.id === id ? builtIn : null;
  // Only what is newer is checked in full: a check of every kept one would take longer than all the rest.
  for (const { sha256, version } of named) {
    if (newest !== null && !isNewerVersion(version, newest.definition.version)) continue;
    newest = (await definitionByHash(sha256)) ?? newest;
  }
  return newest;
}

function versionOf(text: string, id: string): string | null {
  const parsed = parsedOrNull(text);
  if (typeof parsed !== 'object' || parsed === null || !('id' in parsed) || !('version' in parsed)) return null;
  return parsed.id === id && typeof parsed.version === 'string' ? parsed.version : null;
}
