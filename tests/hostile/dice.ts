/** Numbers that follow from a seed: what a fuzzer threw can be thrown again. */
export interface Dice {
  /** From 0 to under `count`. */
  below(count: number): number;
  /** One of them. */
  of<T>(all: readonly T[]): T;
  chance(frac: number): boolean;
}

/** Mulberry32: 32 bits of state, one multiplication a step; good enough to pick places by. Public domain, T. Ettinger. */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (count: number) => Math.floor(next() * count);
  return {
    below,
    of: (all) => {
      const one = all[below(all.length)];
      if (one === undefined) throw new RangeError('dice.of: there must be something to pick from, got nothing');
      return one;
    },
    chance: (frac) => next() < frac,
  };
}
