/** Numbers of the members of a set that was taken apart from them. */
const numbersOf = new WeakMap<object, readonly number[]>();

/**
 * A set (`T`) without its members, which are entries of their own and must not be written with it; what was taken off
 * is remembered for `memberParts`.
 */
export function withoutMembers<T extends object>(set: T, members: string): T {
  const alone = Object.fromEntries(Object.entries(set).filter(([key]) => key !== members)) as T;
  const taken = (set as Readonly<Record<string, unknown>>)[members] as readonly { number: number }[];
  numbersOf.set(
    alone,
    taken.map(({ number }) => number),
  );
  return alone;
}

/** Parts of the entries that are deleted with a set. */
export function memberParts(set: { id: string }): string[] {
  return (numbersOf.get(set) ?? []).map((number) => `${set.id}/${number}`);
}

/** How many members were taken off; null for what was never a stored set. */
export function memberCount(set: object): number | null {
  return numbersOf.get(set)?.length ?? null;
}
