import { canonicalJson } from '../../record/canonical-json.ts';
import { checkDefinition } from '../../schema/check-definition.ts';
import type { SealedChecklist } from '../../sheet/model/sealed/recheck.ts';
import { BUILT_IN_FILES } from '../state/built-in-checklists.ts';
import { parsedOrNull, readBuiltIn } from '../state/definitions.ts';
import { store } from '../state/store.ts';

/**
 * Whether this phone has a checklist: by id and version, and by every word of it. One that came with the app is the
 * measure of its name: another under the same, wherever it came from, is `otherContent`.
 */
export type KnownChecklist = 'builtIn' | 'kept' | 'otherContent' | 'unknown';

export async function knownChecklist({ id, version, definitionText }: SealedChecklist): Promise<KnownChecklist> {
  const isNamesake = (one: { id: string; version: string }) => one.id === id && one.version === version;
  const file = BUILT_IN_FILES.find(isNamesake);
  if (file !== undefined) {
    const { definition } = await readBuiltIn(file);
    return canonicalJson(definition) === definitionText ? 'builtIn' : 'otherContent';
  }
  const kept = (await store().definitions()).flatMap(({ text }) => {
    const checked = checkDefinition(parsedOrNull(text));
    return checked.ok && isNamesake(checked.definition) ? [checked.definition] : [];
  });
  if (kept.some((definition) => canonicalJson(definition) === definitionText)) return 'kept';
  return kept.length > 0 ? 'otherContent' : 'unknown';
}
