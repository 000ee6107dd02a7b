/** What follows `live-test/` in an address: `trip` for the list, `trip/<id>` for one test. */
export interface LiveTestAddress {
  partId: string;
  /** Empty for the list. */
  testId: string;
}

/** Null where the address was cut off or has more steps than there are. */
export function readLiveTestAddress(text: string): LiveTestAddress | null {
  const [partId = '', testId = '', ...more] = text.split('/');
  const known = testId === '' || /^[0-9a-f]{32}$/.test(testId);
  return partId !== '' && known && more.length === 0 ? { partId, testId } : null;
}
