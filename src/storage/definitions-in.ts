import { entries, promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import type { Database } from './database.ts';
import { rangeUnder } from './pack-range.ts';
import type { DefinitionRemoval, PackName } from './store.ts';
import type { UndoStep } from './undo-steps.ts';

/** Parts of `pack` that name a definition by its hash. */
const NAMING: readonly string[] = ['checklist', 'carriedFrom'];
const USED_IN: ('entries' | 'cards' | 'undo')[] = ['entries', 'cards', 'undo'];

/** Every definition kept here with its hash. */
export async function definitionsIn(database: Database): Promise<{ sha256: string; text: string }[]> {
  const kept = await entries<string, string>(database.useStore('definitions'));
  return kept.map(([sha256, text]) => ({ sha256, text }));
}

/** Which packs, put away or not, are, were or by an undo can again be graded by which definition, by its hash. */
export function definitionUsesIn(database: Database): Promise<Map<string, PackName[]>> {
  return database.transact('readonly', USED_IN, usesOf);
}

/** In one transaction, so that no pack can begin with a definition while it is being taken away. */
export function removeDefinitionFrom(database: Database, sha256: string): Promise<DefinitionRemoval> {
  return database.transact('readwrite', [...USED_IN, 'definitions'], async (tx) => {
    const usedBy = (await usesOf(tx)).get(sha256);
    if (usedBy !== undefined) return { ok: false, usedBy };
    tx.objectStore('definitions').delete(sha256);
    return { ok: true };
  });
}

async function usesOf(tx: IDBTransaction): Promise<Map<string, PackName[]>> {
  const uses = new Map<string, PackName[]>();
  for (const { packId, name, sample } of await promisifyRequest<PackCard[]>(tx.objectStore('cards').getAll())) {
    const named = new Set<string>();
    for (const entry of [...(await standing(tx, packId)), ...(await before(tx, packId))]) {
      const sha256 = entry.gone ? null : hashIn(entry.v);
      if (sha256 !== null) named.add(sha256);
    }
    for (const sha256 of named) uses.set(sha256, [...(uses.get(sha256) ?? []), { packId, name, sample }]);
  }
  return uses;
}

/** The entries of a pack that name a definition. */
async function standing(tx: IDBTransaction, packId: string): Promise<Entry[]> {
  const entries = tx.objectStore('entries');
  const found = await Promise.all(
    NAMING.map((part) => promisifyRequest<Entry | undefined>(entries.get([packId, 'pack', part]))),
  );
  return found.filter((entry) => entry !== undefined);
}

/** The same as they were before a change that can be taken back. */
async function before(tx: IDBTransaction, packId: string): Promise<Entry[]> {
  const steps = await promisifyRequest<UndoStep[]>(tx.objectStore('undo').getAll(rangeUnder(packId)));
  return steps
    .flatMap(({ rows }) => rows.flatMap((row) => row.before ?? []))
    .filter(({ key: [, subject, part] }) => subject === 'pack' && NAMING.includes(part));
}

function hashIn(reference: unknown): string | null {
  if (typeof reference !== 'object' || reference === null || !('sha256' in reference)) return null;
  return typeof reference.sha256 === 'string' ? reference.sha256 : null;
}
