import type { Sheet } from '../model/sheet.ts';
import { LACKING, type Typeface } from './typeface.ts';

/** How many characters of the sheet the typeface lacks, each counted where it is printed. */
export function lackingCount({ head, sections }: Sheet, typeface: Typeface): number {
  let count = 0;
  for (const text of printedTexts([head, sections])) {
    if (text.includes(LACKING)) continue;
    count += typeface.printable(text).split(LACKING).length - 1;
  }
  return count;
}

function printedTexts(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(printedTexts);
  if (typeof value !== 'object' || value === null) return [];
  if ('callouts' in value) {
    const { callouts, ...rest } = value as { callouts: readonly { kind: string; text?: string }[] };
    // A leader's words stand in the legend; only words on the picture are printed from the callout itself.
    const onPicture = callouts.flatMap(({ kind, text }) => (kind === 'text' && text !== undefined ? [text] : []));
    return [...printedTexts(rest), ...onPicture];
  }
  return Object.values(value).flatMap(printedTexts);
}
