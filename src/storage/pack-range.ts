/** Every key that begins with the parts given: arrays sort after text, so `[]` closes the range. */
export function rangeUnder(...parts: string[]): IDBKeyRange {
  return IDBKeyRange.bound(parts, [...parts, []]);
}
