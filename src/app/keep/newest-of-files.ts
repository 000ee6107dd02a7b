import { keyText, mergeEntries } from '../../record/merge-entries.ts';
import type { Entry } from '../../schema/entry.ts';
import type { VerifiedPart } from '../../storage/bundle/read-bundle.ts';

/** The entries that several files hold of their packs, of each the newest in any of them. */
export interface NewestOfFiles {
  of(packId: string): Entry[];
  /** Whether no other file holds a newer one under the same key, a later deletion included. */
  has(entry: Entry): boolean;
}

/** Files chosen together are one: an older one among them must not bring back what a newer one says otherwise. */
export function newestOfFiles(bundles: readonly VerifiedPart[]): NewestOfFiles {
  const byPack = new Map<string, Entry[]>();
  for (const { packId, entries } of bundles.flatMap(({ packs }) => packs)) {
    byPack.set(packId, mergeEntries(byPack.get(packId) ?? [], entries));
  }
  const stamps = new Map([...byPack.values()].flat().map(({ key, at }) => [keyText(key), at]));
  return {
    of: (packId) => byPack.get(packId) ?? [],
    has: ({ key, at }) => stamps.get(keyText(key)) === at,
  };
}
