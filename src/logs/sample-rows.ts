import { plainCell } from './cell-kind.ts';
import type { LogLayout } from './log-layout.ts';
import { logText } from './log-text.ts';
import { splitLine } from './split-line.ts';

/** Our choice: enough at the start to tell columns apart, and a few all along for dates and states that come later. */
const FIRST_BYTES = 24_000;
const PLACES = 24;
const PLACE_BYTES = 3000;

/** Cells of rows from the start and from all along a log; `bytes` is one byte a character, from the start of the text. */
export function sampleRows(bytes: Uint8Array, layout: LogLayout): string[][] {
  const lineEnd = layout.lineEnd === 'lf' ? 10 : 13;
  let from = 0;
  for (let line = 1; line < layout.firstDataLine; line++) from = Math.max(from, bytes.indexOf(lineEnd, from) + 1);
  const texts = [bytes.subarray(from, from + FIRST_BYTES)];
  const rest = bytes.length - from - FIRST_BYTES;
  for (let place = 1; rest > 0 && place <= PLACES; place++) {
    const at = Math.floor(from + FIRST_BYTES + (rest * place) / PLACES - PLACE_BYTES);
    const start = bytes.indexOf(lineEnd, Math.max(at, from + FIRST_BYTES)) + 1;
    if (start > 0) texts.push(bytes.subarray(start, start + PLACE_BYTES));
  }
  return texts
    .flatMap((text) => wholeLines(text, layout, lineEnd))
    .map((line) => splitLine(line, layout.separator).map(plainCell));
}

function wholeLines(text: Uint8Array, { encoding, commentMark }: LogLayout, lineEnd: number): string[] {
  const end = text.lastIndexOf(lineEnd);
  const whole = end < 0 ? text : text.subarray(0, end);
  return logText(whole, encoding === 'utf8' ? 'utf8' : 'latin1')
    .split(lineEnd === 10 ? '\n' : '\r')
    .map((line) => line.replace(/\r$/, ''))
    .filter((line) => line.trim() !== '' && !(commentMark !== null && line.startsWith(commentMark)));
}
