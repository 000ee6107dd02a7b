import { calloutMarks } from '../../drawing/callouts.ts';
import { PAPER } from '../../drawing/palette.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { SheetPhoto } from '../model/sheet.ts';
import type { Page } from './page.ts';
import { STYLES } from './text-style.ts';

/** As callouts stand on a phone 520 px high, but never so small that a number is under 7 points. Our choice. */
const PHONE_LONGER_SIDE = 520;
const LEAST_SCALE = 0.48;

/** The JPEG as it is, callouts as vectors above it, a thin frame; words in its place if there is no picture. */
export function paintPhoto(
  page: Page,
  photo: SheetPhoto,
  box: { x: number; y: number; width: number; height: number },
): void {
  const frame = { colour: PAPER.line, width: 0.5, dash: [], cap: 'butt', join: 'miter' } as const;
  const picture = page.pictures.get(photo.photoId) ?? 'missing';
  if (picture instanceof Uint8Array) {
    page.surface.image(photo.photoId, box);
    const scale = Math.max(LEAST_SCALE, Math.max(box.width, box.height) / PHONE_LONGER_SIDE);
    const drawing = calloutMarks({ callouts: photo.callouts, widthPx: box.width, heightPx: box.height, scale });
    page.drawing(drawing, { x: box.x, y: box.y, scale: 1 });
    page.surface.box({ ...box, radius: 0 }, { stroke: { ...frame, dash: [] }, fill: null });
    return;
  }
  page.surface.box({ ...box, radius: 0 }, { stroke: { ...frame, colour: PAPER.muted, dash: [3, 2] }, fill: null });
  const words = picture === 'missing' ? sheetWords.photoMissing : sheetWords.photoUnreadable;
  page.line(words, { x: box.x + box.width / 2, top: box.y + box.height / 2, style: STYLES.small, anchor: 'middle' });
}
