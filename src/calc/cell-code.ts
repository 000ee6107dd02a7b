import { type CellCodeDate, cellCodeDate } from './cell-code-date.ts';
import { CODE_CHEMISTRIES, CODE_CHEMISTRY_LETTERS, CODE_PRODUCTS } from './tables/cell-code-characters.ts';

export type CellCode =
  | {
      ok: true;
      /** `secondUse`: coded again for another use, without traceability field. */
      form: 'new' | 'secondUse';
      /** The code as one word, in capitals. */
      code: string;
      maker: string;
      product: 'pack' | 'module' | 'cell';
      chemistryLetter: string;
      /** Null where the letter's meaning is known only from memory. */
      chemistry: 'lfp' | 'ternary' | null;
      specification: string;
      traceability: string | null;
      date: CellCodeDate;
      serial: string;
    }
  | {
      ok: false;
      because: 'empty' | 'invalidCharacter' | 'wrongLength' | 'halvesSwapped' | 'wrongProduct';
      /** Place of the character at fault in the joined code, counted from 1. */
      at?: number;
      /** That character; for a wrong length the number of characters. */
      found?: string;
    };

/** What may stand at each place, after [1] maker, [4] product. Date places take any sign: a wrong one spoils the date only. */
const LETTERS_AND_DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';
const DIGITS = '0123456789';
const PRODUCTS = [...CODE_PRODUCTS.keys()].join('');
const NEW_PLACES = [
  ...places(3, LETTERS_AND_DIGITS),
  PRODUCTS,
  CODE_CHEMISTRY_LETTERS,
  ...places(12, LETTERS_AND_DIGITS),
  ...places(7, DIGITS),
];
const SECOND_USE_PLACES = [
  ...places(3, LETTERS_AND_DIGITS),
  PRODUCTS,
  CODE_CHEMISTRY_LETTERS,
  ...places(5, LETTERS_AND_DIGITS),
  ...places(7, DIGITS),
  'R',
  PRODUCTS,
];
const PRODUCT_PLACE = 4;

/**
 * Reads a traction-battery code, as cells for storage also bear it.
 *
 * Shape   text as typed or scanned, in one or several lines; blanks and line breaks are left out, small letters read as
 *         capitals. The parts out, or the first thing that is wrong, with its place. A code printed in two lines whose
 *         halves were joined the wrong way round is noticed by its fourth character, which must be C, P or M,
 *         or by another that cannot stand where it does, if it reads well turned round.
 * Error   there is no check digit: a code that reads well may still be wrong or false.
 * Source  GB/T 34014-2017, 24 characters, and 19 for second use; places as an open data model of the trade gives them
 *         (eclipse-tractusx/sldt-semantic-models, traction battery code 2.0.0); the standard's tables were not opened
 * Check   tests/calc/cell-code.test.ts
 */
export function cellCode(text: string): CellCode {
  const code = inCapitals(text.replace(/\s/g, ''));
  if (code === '') return { ok: false, because: 'empty' };
  const characters = Array.from(code);
  const strange = characters.findIndex((character) => !LETTERS_AND_DIGITS.includes(character));
  if (strange >= 0)
    return { ok: false, because: 'invalidCharacter', at: strange + 1, found: characters[strange] ?? '' };
  const allowed = code.length === 24 ? NEW_PLACES : code.length === 19 ? SECOND_USE_PLACES : null;
  if (allowed === null) return { ok: false, because: 'wrongLength', found: String(code.length) };
  const wrong = firstWrongPlace(code, allowed);
  if (wrong === null) return parts(code);
  const found = code.charAt(wrong - 1);
  if (turnedRound(text, code).some((other) => firstWrongPlace(other, allowed) === null)) {
    return { ok: false, because: 'halvesSwapped', at: wrong, found };
  }
  return { ok: false, because: wrong === PRODUCT_PLACE ? 'wrongProduct' : 'invalidCharacter', at: wrong, found };
}

/** The code with its second half first: broken where the text is, else in the middle or before the design part. */
function turnedRound(text: string, code: string): string[] {
  const lines = text.trim().split(/\s+/);
  const designPart = code.length === 24 ? 14 : 7;
  const breaks = lines.length === 2 ? [lines[0]?.length ?? 0] : [Math.floor(code.length / 2), code.length - designPart];
  return breaks.map((at) => code.slice(at) + code.slice(0, at));
}

/** Latin small letters only, so that a foreign sign stays what it is and can be named. */
function inCapitals(text: string): string {
  return text.replace(/[a-z]/g, (letter) => letter.toUpperCase());
}

/** First place, from 1, whose character is not allowed there; null if all are. */
function firstWrongPlace(code: string, allowed: readonly string[]): number | null {
  const index = allowed.findIndex((characters, place) => !characters.includes(code.charAt(place)));
  return index < 0 ? null : index + 1;
}

function parts(code: string): CellCode {
  const isNew = code.length === 24;
  const dateAt = isNew ? 14 : 7;
  const chemistryLetter = code.charAt(4);
  const product = CODE_PRODUCTS.get(code.charAt(PRODUCT_PLACE - 1));
  if (product === undefined) throw new RangeError(`cellCode: no product at place ${PRODUCT_PLACE} of ${code}`);
  return {
    ok: true,
    form: isNew ? 'new' : 'secondUse',
    code,
    maker: code.slice(0, 3),
    product,
    chemistryLetter,
    chemistry: CODE_CHEMISTRIES.get(chemistryLetter) ?? null,
    specification: code.slice(5, 7),
    traceability: isNew ? code.slice(7, 14) : null,
    date: cellCodeDate(code.slice(dateAt, dateAt + 3)),
    serial: code.slice(dateAt + 3, dateAt + 10),
  };
}

function places(count: number, characters: string): string[] {
  return Array.from({ length: count }, () => characters);
}
