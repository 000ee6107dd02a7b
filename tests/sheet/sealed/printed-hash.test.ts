import { expect, it } from 'vitest';
import { readPrintedHash } from '../../../src/sheet/model/sealed/printed-hash.ts';

// FIPS 180-4, SHA-256 of "abc", as NIST's example values print it in capitals and groups of eight.
const PRINTED = 'BA7816BF 8F01CFEA 414140DE 5DAE2223 B00361A3 96177A9C B410FF61 F20015AD';
const DIGITS = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';

it.each([
  ['capitals in groups', PRINTED, DIGITS],
  ['dashes of any kind', 'ba78-16bf–8f01—cfea', 'ba7816bf8f01cfea'],
  ['line ends and a no-break space', 'ba78\n16bf\u00a08f', 'ba7816bf8f'],
  ['the first eight', 'BA7816BF', 'ba7816bf'],
])('takes %s', (_, typed, digits) => {
  expect(readPrintedHash(typed)).toEqual({ is: 'digits', digits });
});

it.each([
  ['nothing', ' – ', { is: 'none' }],
  ['7 digits', 'ba7816b', { is: 'tooShort', digits: 7 }],
  ['65 digits', `${DIGITS}0`, { is: 'tooLong', digits: 65 }],
  ['the letter O', 'ba7816bO', { is: 'notHex', found: 'o' }],
])('says of %s what is wrong', (_, typed, said) => {
  expect(readPrintedHash(typed)).toEqual(said);
});
