import { plainCell } from './cell-kind.ts';
import type { LogLayout } from './log-layout.ts';
import type { LogPreview } from './log-messages.ts';
import { logText, oneByteText } from './log-text.ts';
import { splitLine } from './split-line.ts';

/** Our choice: a phone shows no more without scrolling for long. */
const ROWS = 20;
const ABOVE = 60;
const BYTES = 1 << 18;

/** The first lines of a log, the rows cut into cells as the layout says. */
export function previewOf(bytes: Uint8Array, layout: LogLayout): LogPreview {
  const head = bytes.subarray(layout.byteOrderMarkBytes, BYTES);
  const lines = logText(oneByteText(head, layout.encoding), layout.encoding === 'utf8' ? 'utf8' : 'latin1')
    .split(layout.lineEnd === 'lf' ? '\n' : '\r')
    .map((text, place) => ({ line: place + 1, text: text.replace(/\r$/, '') }));
  const firstRow = layout.firstDataLine - 1;
  return {
    above: lines.slice(Math.max(0, firstRow - ABOVE), firstRow),
    rows: lines
      .slice(firstRow, firstRow + ROWS)
      .filter(({ text }) => text !== '')
      .map(({ line, text }) => ({ line, cells: splitLine(text, layout.separator).map(plainCell) })),
  };
}
