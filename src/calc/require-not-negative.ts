/** Throws RangeError, naming the value, unless it is zero or a positive finite number. */
export function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && Number.isFinite(value))) throw new RangeError(`${name} must be 0 or more, got ${value}`);
}
