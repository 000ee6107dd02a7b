import type { Checklist, Item } from '../../schema/checklist.ts';
import type { Route } from '../../schema/pack-states.ts';
import { isAsked } from '../outcomes.ts';
import { byVersion } from './version-order.ts';

/** What packs on several versions of one checklist can all be judged by. */
export interface CommonGround {
  /** The newest definition, restricted to what every version asks on the route. */
  definition: Checklist;
  /** Oldest first. */
  versions: string[];
  /** Asked by some versions only: those of the newest first, in its order. */
  leftOut: { itemId: string; title: string; versions: string[] }[];
}

/**
 * The newest definition on what all of them ask: its zones, weights, hazards, credits and factors count for all. A
 * remedy settles what is left of its items; one that settles none of them is no remedy here.
 *
 * Shape   one or more definitions of one checklist, each version once.
 * Throws  RangeError if there is none.
 * Check   tests/grading/side-by-side/common-ground.test.ts
 */
export function commonGround(definitions: readonly Checklist[], route: Route): CommonGround {
  const newestFirst = definitions.toSorted((a, b) => byVersion(b.version, a.version));
  const [newest] = newestFirst;
  if (newest === undefined) throw new RangeError('commonGround: needs at least 1 definition, got 0');
  const askedBy = new Map<string, { title: string; versions: string[] }>();
  for (const { version, items } of newestFirst) {
    for (const { id, title } of items.filter((item) => isAsked(item, route))) {
      const seen = askedBy.get(id);
      if (seen === undefined) askedBy.set(id, { title, versions: [version] });
      else seen.versions.unshift(version);
    }
  }
  const isCommon = (itemId: string) => askedBy.get(itemId)?.versions.length === newestFirst.length;
  return {
    definition: restricted(newest, isCommon),
    versions: newestFirst.map(({ version }) => version).reverse(),
    leftOut: [...askedBy].filter(([itemId]) => !isCommon(itemId)).map(([itemId, rest]) => ({ itemId, ...rest })),
  };
}

function restricted(definition: Checklist, isCommon: (itemId: Item['id']) => boolean): Checklist {
  const remedies = definition.remedies.map((remedy) => ({
    ...remedy,
    settles: remedy.settles.filter(({ item }) => isCommon(item)),
  }));
  return {
    ...definition,
    items: definition.items.filter(({ id }) => isCommon(id)),
    remedies: remedies.filter(({ settles }) => settles.length > 0),
  };
}
