import { type TextFace, textWidth } from '../../drawing/text-width.ts';
import { ownerWords as say } from '../../text/owner.ts';
import type { ListBlock, SheetHead, VerdictBlock } from './sheet.ts';

/** A list of the owner's page under its heading. `isWhole`: printed to the last line, whatever else there is. */
export interface FitList {
  id: string;
  title: string;
  items: readonly ListBlock['items'][number][];
  isWhole: boolean;
}

/** The smaller of A4 and Letter, in points, less what lines gain where a word breaks otherwise than reckoned. Our choice. */
const HEIGHT = 662;
const FULL_WIDTH = 475;
const LIST_WIDTH = 462;

/** Line heights and rooms of the PDF, from above (src/sheet/pdf/text-style.ts). */
const FACES = {
  name: { size: 24, weight: 600, leading: 29 },
  verdict: { size: 18, weight: 600, leading: 23 },
  body: { size: 9.5, weight: 400, leading: 13.2 },
  small: { size: 8.3, weight: 400, leading: 11.2 },
} as const satisfies Record<string, TextFace & { leading: number }>;
type Face = (typeof FACES)[keyof typeof FACES];
const HEADING_HEIGHT = 17 + 13;
const ITEM_SPACE = 4;
/** Marks, the rule under the head, and two lines on characters the typeface lacks. */
const HEAD_REST = 66;

/** The lists with as many of their first items as fit on one page; of the rest the number. One item a list in turn. */
export function fitOnPage({
  head,
  verdict,
  lists,
}: {
  head: SheetHead;
  verdict: VerdictBlock;
  lists: readonly FitList[];
}): FitList[] {
  const kept = lists.map(({ isWhole, items }) => (isWhole ? items.length : 0));
  const fixed = headHeight(head) + verdictHeight(verdict);
  const fits = (counts: readonly number[]) =>
    fixed + lists.reduce((sum, list, place) => sum + listHeight(list, counts[place] ?? 0), 0) <= HEIGHT;
  const full = lists.map(({ isWhole }) => isWhole);
  while (full.includes(false)) {
    for (const [place, list] of lists.entries()) {
      if (full[place]) continue;
      const more = kept.map((count, at) => (at === place ? count + 1 : count));
      if ((kept[place] ?? 0) < list.items.length && fits(more)) kept[place] = more[place] ?? 0;
      else full[place] = true;
    }
  }
  return lists.map((list, place) => ({ ...list, items: shownOf(list, kept[place] ?? 0) }));
}

/** A text of at most so many signs, cut with an ellipsis. */
export function shortened(text: string, length: number): string {
  const signs = [...text];
  return signs.length <= length ? text : `${signs.slice(0, length - 1).join('')}…`;
}

function shownOf({ items }: FitList, count: number): FitList['items'] {
  const left = items.length - count;
  return left === 0 ? items : [...items.slice(0, count), { text: say.more(left) }];
}

function listHeight(list: FitList, count: number): number {
  return shownOf(list, count).reduce(
    (sum, { text, detail }) =>
      sum +
      ITEM_SPACE +
      textHeight(text, FACES.body, LIST_WIDTH) +
      (detail === undefined ? 0 : textHeight(detail, FACES.small, LIST_WIDTH)),
    HEADING_HEIGHT,
  );
}

function headHeight({ name, line, overline, caution, standing }: SheetHead): number {
  const body = [overline, line].reduce((sum, text) => sum + textHeight(text, FACES.body, FULL_WIDTH), 0);
  const small = [standing?.text ?? '', caution].reduce(
    (sum, text) => sum + textHeight(text, FACES.small, FULL_WIDTH),
    0,
  );
  return textHeight(name, FACES.name, FULL_WIDTH) + body + small + HEAD_REST;
}

function verdictHeight({ title, line, advice }: VerdictBlock): number {
  const rows = [line, ...advice].reduce((sum, text) => sum + ITEM_SPACE + textHeight(text, FACES.body, FULL_WIDTH), 0);
  return 13 + textHeight(title, FACES.verdict, FULL_WIDTH) + rows;
}

function textHeight(text: string, face: Face, width: number): number {
  return linesOf(text, face, width) * face.leading;
}

/** Lines a text breaks into at its spaces; a longer word is cut. */
function linesOf(text: string, face: TextFace, width: number): number {
  return text.split(/\r\n|\r|\n/).reduce((lines, paragraph) => {
    let [count, used] = [1, 0];
    for (const word of paragraph.split(/[ \t]+/)) {
      const wordWidth = textWidth(word, face);
      const joined = used === 0 ? wordWidth : used + textWidth(' ', face) + wordWidth;
      if (joined <= width) {
        used = joined;
        continue;
      }
      // Cut words break after a sign where one is near, and so take up to twice the lines that their width would.
      const pieces = wordWidth <= width ? 1 : 2 * Math.ceil(wordWidth / width);
      count += used === 0 ? pieces - 1 : pieces;
      used = pieces > 1 ? width : wordWidth;
    }
    return lines + count;
  }, 0);
}
