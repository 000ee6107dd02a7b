import type { ReadOut } from '../../schema/live-tests/read-out.ts';
import type { Derivation } from './derivation.ts';
import { exactly, type Figure, type Reading } from './figure.ts';

const ANY_RANGE: Figure = { low: 0, high: Infinity };

/** How far away a wireless read-out still answers, and whether it asks for an account. */
export const readOut: Derivation = ({ tests }) => {
  const readings = tests.readOuts.filter(({ way }) => way === 'wireless').map(readingsOf);
  const said = readings.filter((list) => list.length > 0);
  if (said.length === 0) return null;
  return {
    alternatives: said.reduce<Reading[][]>((all, list) => all.flatMap((one) => list.map((r) => [...one, r])), [[]]),
  };
};

/** What one read-out may be; nothing where nothing was said of it. */
function readingsOf({ connected, accountNeeded, rangeM }: ReadOut): Reading[] {
  if (connected === false) return [{ case: 'noAnswer' }];
  if (accountNeeded === true) return [{ case: 'account' }];
  const free: Reading = { case: 'free', figure: rangeM === undefined ? ANY_RANGE : exactly(rangeM) };
  if (accountNeeded === false) return [free];
  return rangeM === undefined && connected === undefined ? [] : [free, { case: 'account' }];
}
