/** Something that can be chosen, in the order that decides last. */
export interface CoverOption {
  /** Chosen as seldom as can be. */
  isCostly: boolean;
  /** Null where it is not known. */
  price: number | null;
}

export interface Cover {
  /** Places of the options chosen, rising. */
  places: number[];
  /** False: chosen one by one, because there were too many to try every set; there may be a smaller one. */
  isExact: boolean;
}

/** Every set of so many options is tried: about a million sets, some tens of milliseconds. Our choice. */
export const EXACT_UP_TO = 20;

/** What a set costs, in the order in which it is weighed. */
type Cost = readonly [count: number, costly: number, unpriced: number, price: number];

/**
 * The fewest options that meet every need. Among equally few: fewer costly ones, then fewer without a known price, then
 * the smaller sum of prices, then the earlier options.
 *
 * Shape   of every need the places of the options that meet it, at least one each; options in order.
 * Error   none up to EXACT_UP_TO options that meet a need; above, the set met may not be the smallest, and says so.
 * Throws  RangeError if a need has no option.
 * Check   tests/grading/remedies-smallest.test.ts
 */
export function smallestCover(needs: readonly (readonly number[])[], options: readonly CoverOption[]): Cover {
  if (needs.some((meeting) => meeting.length === 0)) {
    throw new RangeError('smallestCover: every need must have an option that meets it, got none');
  }
  const useful = [...new Set(needs.flat())].sort((a, b) => a - b);
  const isExact = useful.length <= EXACT_UP_TO;
  return { places: isExact ? exactCover(needs, options, useful) : greedyCover(needs, options, useful), isExact };
}

/** Sets as bits, the first option the highest: of sets alike in all else the greater number has the earlier options. */
function exactCover(
  needs: readonly (readonly number[])[],
  options: readonly CoverOption[],
  useful: number[],
): number[] {
  const bitOf = new Map(useful.map((place, index) => [place, 1 << (useful.length - 1 - index)]));
  const masks = [...new Set(needs.map((meeting) => meeting.reduce((mask, place) => mask | bitOf.get(place)!, 0)))];
  const placesIn = (set: number) => useful.filter((place) => (set & bitOf.get(place)!) !== 0);
  let best = useful;
  let bestCost = costOf(useful, options);
  for (let set = 2 ** useful.length - 1; set >= 0; set -= 1) {
    if (bitCount(set) > bestCost[0] || masks.some((mask) => (mask & set) === 0)) continue;
    const places = placesIn(set);
    const cost = costOf(places, options);
    if (!isLess(cost, bestCost)) continue;
    best = places;
    bestCost = cost;
  }
  return best;
}

/** The one that meets most of what is left, again and again; then those that turned out to be needless are dropped. */
function greedyCover(
  needs: readonly (readonly number[])[],
  options: readonly CoverOption[],
  useful: number[],
): number[] {
  const chosen: number[] = [];
  let left = needs;
  while (left.length > 0) {
    const metBy = (place: number) => left.filter((meeting) => meeting.includes(place)).length;
    const next = useful.reduce((best, place) => {
      const [mine, others] = [metBy(place), metBy(best)];
      if (mine !== others) return mine > others ? place : best;
      return isLess(costOf([place], options), costOf([best], options)) ? place : best;
    });
    chosen.push(next);
    left = left.filter((meeting) => !meeting.includes(next));
  }
  return chosen
    .reduce((kept, place) => {
      const without = kept.filter((other) => other !== place);
      return needs.every((meeting) => meeting.some((other) => without.includes(other))) ? without : kept;
    }, chosen)
    .sort((a, b) => a - b);
}

function costOf(places: readonly number[], options: readonly CoverOption[]): Cost {
  let [costly, unpriced, sum] = [0, 0, 0];
  for (const place of places) {
    const { isCostly, price } = options[place]!;
    if (isCostly) costly += 1;
    if (price === null) unpriced += 1;
    else sum += price;
  }
  return [places.length, costly, unpriced, sum];
}

function isLess(one: Cost, other: Cost): boolean {
  const at = one.findIndex((figure, place) => figure !== other[place]);
  return at >= 0 && one[at]! < other[at]!;
}

function bitCount(set: number): number {
  let count = 0;
  for (let left = set; left !== 0; left &= left - 1) count += 1;
  return count;
}
