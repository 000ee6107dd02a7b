import { canonicalJson } from '../../record/canonical-json.ts';
import { checkDefinition } from '../../schema/check-definition.ts';
import { BUILT_IN_FILES } from '../state/built-in-checklists.ts';
import { parsedOrNull, readBuiltIn } from '../state/definitions.ts';
import { store } from '../state/store.ts';

/** Whether this phone has a checklist: by id and version, and by every word of it. */
export type KnownChecklist = 'builtIn' | 'kept' | 'otherContent' | 'unknown';

/** `definitionText` is the RFC 8785 text of the definition in hand, its defaults filled in. */
export async function knownChecklist(
  { id, version }: { id: string; version: string },
  definitionText: string,
): Promise<KnownChecklist> {
  const isNamesake = (one: { id: string; version: string }) => one.id === id && one.version === version;
  const file = BUILT_IN_FILES.find(isNamesake);
  const builtIn = file === undefined ? null : (await readBuiltIn(file)).definition;
  if (builtIn !== null && canonicalJson(builtIn) === definitionText) return 'builtIn';
  const kept = (await store().definitions()).flatMap(({ text }) => {
    const checked = checkDefinition(parsedOrNull(text));
    return checked.ok && isNamesake(checked.definition) ? [checked.definition] : [];
  });
  if (kept.some((definition) => canonicalJson(definition) === definitionText)) return 'kept';
  return kept.length > 0 || builtIn !== null ? 'otherContent' : 'unknown';
}
