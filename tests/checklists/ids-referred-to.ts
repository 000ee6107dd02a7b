/** Ids of items and facts that a source text names, found by where they stand. */
export interface IdsReferredTo {
  items: string[];
  facts: string[];
}

const ID = `['"]?([a-z][a-z0-9]*(?:-[a-z0-9]+)*)['"]?`;

/** In turn: `itemId: 'x'`, `itemIds: ['x'` (the first of them); a put or a key of an answer; `'x': graded(`; `['x', 'weak'`. */
const ITEM_PLACES = [
  String.raw`\bitemIds?\s*[:=]+\s*\[?\s*(?=['"])${ID}`,
  entryOf('answer'),
  String.raw`(?:^|[\s{,])${ID}\s*:\s*(?:graded|notSeen|doesNotApply)\(`,
  String.raw`(?=['"])${ID},\s*'(?:sound|passable|weak|failed)'`,
];
const FACT_PLACES = [String.raw`\bfactId\s*[:=]+\s*(?=['"])${ID}`, entryOf('fact')];

export function idsReferredTo(source: string): IdsReferredTo {
  return { items: idsAt(source, ITEM_PLACES), facts: idsAt(source, FACT_PLACES) };
}

/** `subject: 'answer', part: 'x'` or `[packId, 'answer', 'x'`. */
function entryOf(subject: string): string {
  return String.raw`(?:subject:\s*'${subject}',\s*part:\s*|\[\s*\w+,\s*'${subject}',\s*)(?=['"])${ID}`;
}

function idsAt(source: string, places: readonly string[]): string[] {
  const found = places.flatMap((place) => [...source.matchAll(new RegExp(place, 'gm'))].map((match) => match[1] ?? ''));
  return [...new Set(found)].toSorted();
}
