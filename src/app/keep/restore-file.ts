import { foldRecord } from '../../record/fold-record.ts';
import { checkDefinition } from '../../schema/check-definition.ts';
import type { Checklist } from '../../schema/checklist.ts';
import type { Entry } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import { readBundle, type VerifiedPart } from '../../storage/bundle/read-bundle.ts';
import { type RestoreReport, restoreBundle } from '../../storage/bundle/restore-bundle.ts';
import { bundleRefusals, nothingChanged } from '../../text/bundle.ts';
import { words } from '../../text/words.ts';
import { bareCard, cardFromEntries } from '../card-of.ts';
import { definitionByHash, parsedOrNull } from '../state/definitions.ts';
import { store } from '../state/store.ts';

export type Restored =
  | { ok: true; report: RestoreReport; bundle: VerifiedPart; labels: ReadonlyMap<string, string> }
  | { ok: false; sentence: string };

/** Checks one bundle file whole, then merges it. */
export async function restoreFile(file: File): Promise<Restored> {
  const read = await readBundle(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) return { ok: false, sentence: `${bundleRefusals[read.refusal]} ${nothingChanged}` };
  return mergeBundle(read.bundle, false);
}

export async function mergeBundle(bundle: VerifiedPart, bringBackDeleted: boolean): Promise<Restored> {
  const definitions = new Map<string, Checklist>();
  for (const { sha256, text } of bundle.definitions) {
    const checked = checkDefinition(parsedOrNull(text));
    if (checked.ok) definitions.set(sha256, checked.definition);
  }
  for (const { packId } of bundle.packs) {
    // A pack that was carried over here keeps the checklist it has, and an older backup does not hold that one.
    const reference = foldRecord(packId, await store().entriesOf(packId)).checklist;
    const here = reference && (await definitionByHash(reference.sha256));
    if (here) definitions.set(here.sha256, here.definition);
  }
  const labels = new Map<string, string>();
  const report = await restoreBundle(store(), bundle, {
    bringBackDeleted,
    cardOf: (entries) => {
      const card = cardFor(entries, definitions);
      labels.set(card.packId, words.packLabel(card.name, card.sample));
      return card;
    },
  });
  return { ok: true, report, bundle, labels };
}

function cardFor(entries: Entry[], definitions: ReadonlyMap<string, Checklist>): PackCard {
  const packId = entries[0]?.key[0] ?? '';
  const record = foldRecord(packId, entries);
  const definition = record.checklist && definitions.get(record.checklist.sha256);
  return definition ? cardFromEntries(packId, entries, definition) : bareCard(record);
}
