import { cellCode } from '../../../calc/cell-code.ts';
import { formatDay } from '../../../text/format-day.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';

/** What a code reads as, in a few words, before it is kept. */
export function codeGlance(text: string): string {
  const code = cellCode(text);
  if (!code.ok) return say.readsNot;
  const { date } = code;
  if ('invalid' in date) return say.readsAs(code.maker, say.dateNotValid);
  const two = (part: number) => String(part).padStart(2, '0');
  return say.readsAs(code.maker, formatDay(`${date.year}-${two(date.month)}-${two(date.day)}`));
}

export interface CodeCharacter {
  character: string;
  /** Cannot stand where it does. */
  wrong: boolean;
  /** First of a field of the code: a gap stands before it. */
  opens: boolean;
}

/** First characters of the fields: maker, product, chemistry, specification, traceability, date, serial. */
const FIELDS_BY_LENGTH: Readonly<Record<number, readonly number[]>> = {
  24: [4, 5, 6, 8, 15, 18],
  19: [4, 5, 6, 8, 11, 18],
};

/** The characters of a code one by one, in their fields where the length tells which they are. */
export function codeCharacters(text: string): CodeCharacter[] {
  const code = cellCode(text);
  const characters = Array.from(text.replace(/\s/g, ''));
  const opening = FIELDS_BY_LENGTH[characters.length] ?? [];
  return characters.map((character, index) => ({
    character,
    wrong: !code.ok && code.at === index + 1,
    opens: opening.includes(index + 1),
  }));
}
