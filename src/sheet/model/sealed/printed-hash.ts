/** Fewer digits tell too little: eight are one in four thousand million. Our choice. */
export const LEAST_DIGITS = 8;
/**
 * So many digits nobody can meet on purpose: 128 bits. Fewer rule out a slip, but a file can be altered and tried until
 * 8 or 12 of them agree. Our choice.
 */
export const SURE_DIGITS = 32;
const ALL_DIGITS = 64;

/** `digits` of the printed SHA-256 were compared with the same number of the file's. */
export type PrintedHash =
  | { is: 'none' }
  | { is: 'tooShort'; digits: number }
  | { is: 'tooLong'; digits: number }
  /** `found` is the first character that is no hexadecimal digit. */
  | { is: 'notHex'; found: string }
  | { is: 'digits'; digits: string };

/** A SHA-256 as a person copies it from paper: spaces, dashes and capitals are forgiven, and the end may be left out. */
export function readPrintedHash(typed: string): PrintedHash {
  const digits = typed.replace(/[\s\p{Dash}:.,]/gu, '').toLowerCase();
  if (digits === '') return { is: 'none' };
  const strange = /[^0-9a-f]/u.exec(digits);
  if (strange !== null) return { is: 'notHex', found: strange[0] };
  if (digits.length < LEAST_DIGITS) return { is: 'tooShort', digits: digits.length };
  if (digits.length > ALL_DIGITS) return { is: 'tooLong', digits: digits.length };
  return { is: 'digits', digits };
}
