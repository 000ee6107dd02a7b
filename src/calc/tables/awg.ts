/**
 * American wire gauge sizes, thickest first, with the gauge number the formula takes: 1/0 is 0, 2/0 is −1, 4/0 is −3.
 *
 * Source  ASTM B258 as given in several public tables; the document itself was not opened
 * Check   tests/calc/awg-area.test.ts
 */
export const AWG_SIZES = [
  { size: '4/0', gauge: -3 },
  { size: '3/0', gauge: -2 },
  { size: '2/0', gauge: -1 },
  { size: '1/0', gauge: 0 },
  { size: '1', gauge: 1 },
  { size: '2', gauge: 2 },
  { size: '3', gauge: 3 },
  { size: '4', gauge: 4 },
  { size: '5', gauge: 5 },
  { size: '6', gauge: 6 },
  { size: '7', gauge: 7 },
  { size: '8', gauge: 8 },
  { size: '9', gauge: 9 },
  { size: '10', gauge: 10 },
  { size: '11', gauge: 11 },
  { size: '12', gauge: 12 },
  { size: '13', gauge: 13 },
  { size: '14', gauge: 14 },
  { size: '15', gauge: 15 },
  { size: '16', gauge: 16 },
  { size: '17', gauge: 17 },
  { size: '18', gauge: 18 },
  { size: '19', gauge: 19 },
  { size: '20', gauge: 20 },
  { size: '21', gauge: 21 },
  { size: '22', gauge: 22 },
  { size: '23', gauge: 23 },
  { size: '24', gauge: 24 },
  { size: '25', gauge: 25 },
  { size: '26', gauge: 26 },
  { size: '27', gauge: 27 },
  { size: '28', gauge: 28 },
  { size: '29', gauge: 29 },
  { size: '30', gauge: 30 },
] as const;
export type AwgSize = (typeof AWG_SIZES)[number]['size'];

/** Gauge number of a size as printed on a lead (`2/0`, `00`, `AWG 8`, `8 AWG`); null when it is none listed here. */
export function awgGauge(printed: string): number | null {
  const bare = printed.toUpperCase().replace('AWG', '').replace(/[\s#]/g, '');
  const size = /^0{1,4}$/.test(bare) ? `${bare.length}/0` : bare;
  return AWG_SIZES.find((row) => row.size === size)?.gauge ?? null;
}
