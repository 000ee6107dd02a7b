/**
 * Meaning of the characters of a GB/T 34014-2017 code.
 *
 * Source  the standard's own tables were not opened. Date characters: the whole day table and the years from F (2025)
 *         were read in public files; the years 1 to E in a weaker one, consistent with codes seen on cells. One public
 *         file gives U to 2037, which moves later years by one.
 * Check   tests/calc/cell-code.test.ts
 */
const WITHOUT_LOOKALIKES = 'ABCDEFGHJKLMNPRSTVWXY';

/** 1 is 2011, A is 2020, Y is 2040. */
export const CODE_YEARS = `123456789${WITHOUT_LOOKALIKES}`;
export const CODE_FIRST_YEAR = 2011;
/** 1 is January, C is December. */
export const CODE_MONTHS = '123456789ABC';
/** 1 is the 1st, A the 10th, Y the 30th, 0 the 31st. */
export const CODE_DAYS = `123456789${WITHOUT_LOOKALIKES}0`;

/** Fourth character. */
export const CODE_PRODUCTS: ReadonlyMap<string, 'pack' | 'module' | 'cell'> = new Map([
  ['P', 'pack'],
  ['M', 'module'],
  ['C', 'cell'],
]);

/** Fifth character: the letters a code may bear. */
export const CODE_CHEMISTRY_LETTERS = 'ABCDEFGZ';
/** Those whose meaning was read somewhere; the others' is known only from memory and is not given out. */
export const CODE_CHEMISTRIES: ReadonlyMap<string, 'lfp' | 'ternary'> = new Map([
  ['B', 'lfp'],
  ['E', 'ternary'],
]);
