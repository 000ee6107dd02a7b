import { entries, promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import type { Database } from './database.ts';
import type { DefinitionRemoval } from './store.ts';

/** Every definition kept here with its hash. */
export async function definitionsIn(database: Database): Promise<{ sha256: string; text: string }[]> {
  const kept = await entries<string, string>(database.useStore('definitions'));
  return kept.map(([sha256, text]) => ({ sha256, text }));
}

/** In one transaction, so that no pack can begin with a definition while it is being taken away. */
export function removeDefinitionFrom(database: Database, sha256: string): Promise<DefinitionRemoval> {
  return database.transact('readwrite', ['entries', 'cards', 'definitions'], async (tx) => {
    const cards = await promisifyRequest<PackCard[]>(tx.objectStore('cards').getAll());
    const usedBy: { packId: string; name: string; sample: string }[] = [];
    for (const { packId, name, sample } of cards) {
      for (const part of ['checklist', 'carriedFrom']) {
        const entry = await promisifyRequest<Entry | undefined>(tx.objectStore('entries').get([packId, 'pack', part]));
        if (entry === undefined || entry.gone || !isNamed(entry.v, sha256)) continue;
        usedBy.push({ packId, name, sample });
        break;
      }
    }
    if (usedBy.length > 0) return { ok: false, usedBy };
    tx.objectStore('definitions').delete(sha256);
    return { ok: true };
  });
}

function isNamed(reference: unknown, sha256: string): boolean {
  return typeof reference === 'object' && reference !== null && 'sha256' in reference && reference.sha256 === sha256;
}
