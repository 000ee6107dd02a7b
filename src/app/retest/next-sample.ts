import type { PackCard } from '../../schema/pack-card.ts';

/**
 * The next free sample number among packs of one name, those put away included: they may come back. Samples that are no
 * whole number ("B", "2 of the second lot") count for nothing. A new revision is numbered on as well: two packs of one
 * label could not be told apart on the Bench.
 */
export function nextSample(name: string, cards: readonly Pick<PackCard, 'name' | 'sample'>[]): string {
  const taken = cards.filter((card) => sameName(card.name, name)).map(({ sample }) => sample.trim());
  const numbers = taken.filter((sample) => /^[1-9]\d{0,8}$/.test(sample)).map(Number);
  return String(Math.max(0, ...numbers) + 1);
}

function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
