import { ADVANCE_OTHERS, ADVANCE_RANGES, ADVANCES } from './text-advances.ts';

export interface TextFace {
  size: number;
  weight: 400 | 500 | 600;
}

/** Width taken for a character that is not in the table: our choice, as wide as a capital letter of the face. */
const UNKNOWN_ADVANCE = 650;
/** CJK and emoji stand on a full square. */
const FULL_WIDTH_FROM = 0x2e80;

/** How wide a line of text will be in Underlid Sans, in the unit of `size`, without asking a browser. */
export function textWidth(text: string, face: TextFace): number {
  let thousandths = 0;
  for (const character of text.normalize('NFC')) {
    thousandths += advanceOf(character, face.weight);
  }
  return (thousandths / 1000) * face.size;
}

/** Whether every character of a text is one of the typeface's whose width is known here. */
export function knowsWidths(text: string): boolean {
  return [...text.normalize('NFC')].every((character) => PLACE_OF.has(character));
}

const PLACE_OF: ReadonlyMap<string, number> = new Map(
  [
    ...ADVANCE_RANGES.flatMap(([first, last]) =>
      Array.from({ length: last - first + 1 }, (_, step) => String.fromCodePoint(first + step)),
    ),
    ...ADVANCE_OTHERS,
  ].map((character, place) => [character, place]),
);

function advanceOf(character: string, weight: TextFace['weight']): number {
  const place = PLACE_OF.get(character);
  const known = place === undefined ? undefined : ADVANCES[weight][place];
  if (known !== undefined) return known;
  return (character.codePointAt(0) ?? 0) >= FULL_WIDTH_FROM ? 1000 : UNKNOWN_ADVANCE;
}
