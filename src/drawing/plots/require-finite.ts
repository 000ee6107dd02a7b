/** Throws RangeError if a number among the values is not finite: a place on paper must be one. */
export function requireFinite(what: string, values: readonly number[]): void {
  for (const value of values) {
    if (!Number.isFinite(value)) throw new RangeError(`${what}: must be finite, got ${value}`);
  }
}

/** As `requireFinite`, and above 0: what stands on an axis by decades. */
export function requirePositive(what: string, values: readonly number[]): void {
  requireFinite(what, values);
  for (const value of values) if (value <= 0) throw new RangeError(`${what}: must be above 0, got ${value}`);
}

/** Throws RangeError if a list beside `timeS` has another length, or holds a number that is not finite. */
export function requireSeries(what: string, values: readonly number[], length: number): void {
  if (values.length !== length) {
    throw new RangeError(`${what}: must have as many values as timeS (${length}), got ${values.length}`);
  }
  requireFinite(what, values);
}
