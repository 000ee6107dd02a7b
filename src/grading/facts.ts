import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist, Item } from '../schema/checklist.ts';

/** By fact id, the choice made. A fact that is missing here is open. */
export type KnownFacts = ReadonlyMap<string, string>;

/** The facts a record settles. A choice the definition does not offer settles nothing: its fact stays open. */
export function knownFacts(definition: Checklist, facts: PackRecord['facts']): KnownFacts {
  const known = new Map<string, string>();
  for (const fact of definition.facts) {
    if (!Object.hasOwn(facts, fact.id)) continue;
    const choice = fact.choices.find(({ id }) => id === facts[fact.id]);
    if (choice !== undefined) known.set(fact.id, choice.id);
  }
  return known;
}

/** Whether the item's fact lets it apply; an item without one applies. */
export function factSays(item: Item, known: KnownFacts): 'applies' | 'excludes' | 'open' {
  if (item.onlyIf === undefined) return 'applies';
  const choice = known.get(item.onlyIf.fact);
  if (choice === undefined) return 'open';
  return choice === item.onlyIf.is ? 'applies' : 'excludes';
}
