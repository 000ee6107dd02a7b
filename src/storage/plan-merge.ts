import { keyText, mergeEntries, winnerOf } from '../record/merge-entries.ts';
import type { Entry, EntryKey } from '../schema/entry.ts';

/** What bringing a bundle's entries into those that stand here would do; nothing is written yet. */
export interface MergePlan {
  /** Entries of the bundle that win, as they came. */
  puts: Entry[];
  newerHere: EntryKey[];
  /** Entries of the bundle against which a later deletion stands here. */
  deletedHere: Entry[];
  /** The pack's entries after the puts. */
  merged: Entry[];
}

/** Merges by stamp, pack by pack; both lists hold one entry a key. */
export function planMerge(here: readonly Entry[], incoming: readonly Entry[]): MergePlan {
  const present = new Map(here.map((entry) => [keyText(entry.key), entry]));
  const plan: MergePlan = { puts: [], newerHere: [], deletedHere: [], merged: mergeEntries(here, incoming) };
  for (const entry of incoming) {
    const standing = present.get(keyText(entry.key));
    if (standing === undefined) plan.puts.push(entry);
    else if (standing.at === entry.at && winnerOf(standing, entry) === standing) continue;
    else if (winnerOf(standing, entry) === entry) plan.puts.push(entry);
    else if (standing.gone && !entry.gone) plan.deletedHere.push(entry);
    else plan.newerHere.push(entry.key);
  }
  return plan;
}
