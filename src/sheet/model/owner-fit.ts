import { knowsWidths, type TextFace, textWidth } from '../../drawing/text-width.ts';
import { ownerWords as say } from '../../text/owner.ts';
import type { ListBlock, SheetHead, VerdictBlock } from './sheet.ts';

/** A list of the owner's page under its heading. */
export interface FitList {
  id: string;
  title: string;
  items: readonly ListBlock['items'][number][];
  /** The first so many are what matters: they get room before any list gets more. */
  firstCount: number;
  /** What was found comes first: the first of this list get room after those of the others. */
  isLater?: true;
  /** Printed to the last line, whatever else there is. */
  isWhole?: true;
}

/** Between the margins (sheet/pdf/paper.ts), in points, less what lines gain where a word breaks otherwise than reckoned. */
const ROOMS = { a4: { height: 720 - 2, width: 482 - 1 }, letter: { height: 670 - 2, width: 498 - 1 } } as const;
export type OwnerPaper = keyof typeof ROOMS;
/** A list stands behind its dashes. */
const LIST_INDENT = 10;

/** Line heights and rooms of the PDF, from above (src/sheet/pdf/text-style.ts). */
const FACES = {
  name: { size: 24, weight: 600, leading: 29 },
  verdict: { size: 18, weight: 600, leading: 23 },
  body: { size: 9.5, weight: 400, leading: 13.2 },
  small: { size: 8.3, weight: 400, leading: 11.2 },
} as const satisfies Record<string, TextFace & { leading: number }>;
type Face = (typeof FACES)[keyof typeof FACES];
const HEADING_HEIGHT = 11 + 13;
/** The first heading keeps clear of the ground behind the head. */
const GROUND_CLEARANCE = 6;
const ITEM_SPACE = 2;
/** Marks, and the rule under the head, with the spaces between. */
const HEAD_REST = 42;
const VERDICT_SPACES = { head: 13 + 1, advice: 3 };
/** Steps after a stop sign stand wider apart, beside a bar. */
const STOP = { inset: 12 + 10, leading: 15.5 };
/** Two lines at the foot on characters that the typeface lacks. */
const REMARK_HEIGHT = 7 + 2 * 11.2;

/**
 * The lists with as many of their first items as fit on one page; of the rest the number. One item a list in turn, what
 * matters of all lists before the rest of any.
 */
export function fitOnPage({
  head,
  verdict,
  lists,
  paper,
}: {
  head: SheetHead;
  verdict: VerdictBlock;
  lists: readonly FitList[];
  paper: OwnerPaper;
}): FitList[] {
  const kept = lists.map(({ isWhole, items }) => (isWhole === true ? items.length : 0));
  const { height, width } = ROOMS[paper];
  const fixed =
    headHeight(head, width) + verdictHeight(verdict, width) + GROUND_CLEARANCE + remarkHeight({ head, verdict, lists });
  const fits = (counts: readonly number[]) =>
    fixed + lists.reduce((sum, list, place) => sum + listHeight(shownOf(list, counts[place] ?? 0), width), 0) <= height;
  const full = lists.map(() => false);
  const addInTurn = (limitOf: (list: FitList) => number) => {
    const isDone = (list: FitList, place: number) => full[place] === true || (kept[place] ?? 0) >= limitOf(list);
    while (!lists.every(isDone)) {
      for (const [place, list] of lists.entries()) {
        if (isDone(list, place)) continue;
        const more = kept.map((count, at) => (at === place ? count + 1 : count));
        if (fits(more)) kept[place] = more[place] ?? 0;
        else full[place] = true;
      }
    }
  };
  addInTurn(({ firstCount, isLater }) => (isLater === true ? 0 : firstCount));
  addInTurn(({ firstCount }) => firstCount);
  addInTurn(({ items }) => items.length);
  return lists.map((list, place) => shownOf(list, kept[place] ?? 0));
}

/** A text of at most so many signs, cut with an ellipsis. */
export function shortened(text: string, length: number): string {
  const signs = [...text];
  return signs.length <= length ? text : `${signs.slice(0, length - 1).join('')}…`;
}

/** How many are left to the sheet stands beside the heading, where it takes no line. */
function shownOf(list: FitList, count: number): FitList {
  const left = list.items.length - count;
  if (left === 0) return list;
  if (count === 0) return { ...list, items: [{ text: say.allCut(left) }] };
  return { ...list, title: say.cut(list.title, left), items: list.items.slice(0, count) };
}

function listHeight({ items }: FitList, width: number): number {
  return items.reduce(
    (sum, { text, detail }) =>
      sum +
      ITEM_SPACE +
      textHeight(text, FACES.body, width - LIST_INDENT) +
      (detail === undefined ? 0 : textHeight(detail, FACES.small, width - LIST_INDENT)),
    HEADING_HEIGHT,
  );
}

function headHeight({ name, line, overline, caution, standing }: SheetHead, width: number): number {
  const body = [overline, line].reduce((sum, text) => sum + textHeight(text, FACES.body, width), 0);
  const small = [standing?.text ?? '', caution].reduce((sum, text) => sum + textHeight(text, FACES.small, width), 0);
  return textHeight(name, FACES.name, width) + body + small + HEAD_REST;
}

function verdictHeight({ title, line, advice, stop }: VerdictBlock, width: number): number {
  const rows = advice.map((text) =>
    stop
      ? linesOf(text, FACES.body, width - STOP.inset) * STOP.leading
      : VERDICT_SPACES.advice + textHeight(text, FACES.body, width),
  );
  const head = VERDICT_SPACES.head + textHeight(title, FACES.verdict, width) + textHeight(line, FACES.body, width);
  return rows.reduce((sum, height) => sum + height, head);
}

/** Texts that are cut may be the ones with such characters: then the room stays free. */
function remarkHeight({ head, verdict, lists }: { head: SheetHead; verdict: VerdictBlock; lists: readonly FitList[] }) {
  const texts = [
    ...[head.overline, head.name, head.line, head.standing?.text ?? '', head.caution],
    ...[verdict.title, verdict.line, ...verdict.advice],
    ...lists.flatMap(({ title, items }) => [title, ...items.flatMap(({ text, detail = '' }) => [text, detail])]),
  ];
  return texts.every(knowsWidths) ? 0 : REMARK_HEIGHT;
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
