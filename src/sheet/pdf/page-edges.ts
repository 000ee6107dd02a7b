import { PAPER } from '../../drawing/palette.ts';
import { formatDay, localDay } from '../../text/format-day.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { Sheet } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Placed } from './flow.ts';
import type { Page } from './page.ts';
import { STYLES } from './text-style.ts';

const MM = 72 / 25.4;
/** Squares of a notebook. */
const SQUARE = 5 * MM;
/** Between face and line, our choice: seen on screen, quiet in print. */
const SQUARE_COLOUR = '#EFE9DA';

/** The ruled ground behind the head of the sheet, down to the last chunk that belongs on it. */
export function paintGround({ frame }: Desk, page: Page, placed: readonly Placed[]): void {
  const ends = placed.filter(({ chunk }) => chunk.onGround).map(({ chunk, top }) => top + chunk.height);
  if (ends.length === 0) return;
  const bottom = Math.min(Math.max(...ends) + 12, frame.height);
  page.surface.box({ x: 0, y: 0, width: frame.width, height: bottom, radius: 0 }, { stroke: null, fill: PAPER.face });
  const stroke = { colour: SQUARE_COLOUR, width: 0.4, dash: [], cap: 'butt', join: 'miter' } as const;
  for (let x = SQUARE; x < frame.width; x += SQUARE) {
    page.surface.polyline(
      [
        [x, 0],
        [x, bottom],
      ],
      { ...stroke, dash: [] },
    );
  }
  for (let y = SQUARE; y < bottom; y += SQUARE) {
    page.surface.polyline(
      [
        [0, y],
        [frame.width, y],
      ],
      { ...stroke, dash: [] },
    );
  }
  page.rule({ x: 0, y: bottom, width: frame.width, thickness: 0.6, ink: 'line' });
}

/** Name and demo mark at the top of every page but the first, which says both in its head; number at every foot. */
export function paintEdges({ frame, typeface }: Desk, page: Page, at: EdgePlace): void {
  const { sheet, number, count } = at;
  const style = STYLES.foot;
  if (number > 1) {
    const top = frame.top - 27;
    const head = typeface.printable(sheetWords.runningHead(sheet.title, [sheet.demoMark, sheet.standingMark]));
    page.line(head, { x: frame.left, top, style });
    if (sheet.newestMs !== null) {
      const day = formatDay(localDay(sheet.newestMs, sheet.utcOffsetMinutes));
      page.line(typeface.printable(day), { x: frame.right, top, style, anchor: 'end' });
    }
    page.rule({ x: frame.left, y: top + style.leading + 3, width: frame.fullWidth, thickness: 0.4, ink: 'line' });
  }
  const foot = frame.bottom + 18;
  page.line(typeface.printable(sheet.madeBy), { x: frame.left, top: foot, style });
  page.line(sheetWords.page(number, count), { x: frame.right, top: foot, style, anchor: 'end' });
}

interface EdgePlace {
  sheet: Sheet;
  number: number;
  count: number;
}
