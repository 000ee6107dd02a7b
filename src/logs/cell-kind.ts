import type { DecimalMark } from './log-layout.ts';

/** What the text of one cell could be. */
export type CellKind = 'empty' | 'number' | 'time' | 'text';

const EMPTY = /^(|-|--|n\/?a|nan|null|none|#n\/a)$/i;
const POINT = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const COMMA = /^[+-]?(\d+,?\d*|,\d+)(e[+-]?\d+)?$/i;
const GROUPED_POINT = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/;
const GROUPED_COMMA = /^[+-]?\d{1,3}([. '\u00a0\u202f]\d{3})+(,\d+)?$/;
/** A date, or a clock time of two or three parts, days before it or not. */
const TIME =
  /^\d{1,4}[-/.](\d{1,2}|[a-z]{3,9})[-/.]\d{1,4}([ t].*)?$|^(\d+ ?d(ays?)?,? ?)?\d+:\d{1,2}(:\d{1,2}([.,:]\d+)?)?( ?[ap]m)?$/i;
/** A unit glued to the number it belongs to: `13.2V`, `25 °C`. */
const GLUED_UNIT = /^([-+\d.,e ]*\d)\s*([a-zµ°%Ω]{1,4})$/i;

export function cellKind(text: string, decimalMark: DecimalMark): CellKind {
  const plain = plainCell(text);
  if (EMPTY.test(plain)) return 'empty';
  if (!Number.isNaN(cellNumber(plain, decimalMark))) return 'number';
  return TIME.test(plain) ? 'time' : 'text';
}

/** Quotes, blanks of every width and the typographic minus are not part of a cell. */
export function plainCell(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cf}]/gu, ' ')
    .trim()
    .replace(/^"(.*)"?$/, '$1')
    .replace(/^'(.*)'$/, '$1')
    .replace(/"$/, '')
    .replace(/\u2212/g, '-')
    .trim();
}

/** The number a cell holds, grouped thousands and a glued unit allowed; not a number where it holds none. */
export function cellNumber(text: string, decimalMark: DecimalMark): number {
  const plain = plainCell(text);
  const direct = written(plain, decimalMark);
  if (!Number.isNaN(direct)) return direct;
  const glued = GLUED_UNIT.exec(plain);
  return glued === null ? Number.NaN : written((glued[1] ?? '').trim(), decimalMark);
}

function written(plain: string, decimalMark: DecimalMark): number {
  if (decimalMark === '.') {
    if (POINT.test(plain)) return Number(plain);
    return GROUPED_POINT.test(plain) ? Number(plain.replaceAll(',', '')) : Number.NaN;
  }
  if (COMMA.test(plain)) return Number(plain.replace(',', '.'));
  return GROUPED_COMMA.test(plain) ? Number(plain.replace(/[. '\u00a0\u202f]/g, '').replace(',', '.')) : Number.NaN;
}
