import { type CellKind, cellKind, plainCell } from './cell-kind.ts';
import type { DecimalMark, LayoutChoice, LogEncoding, LogLayout, LogSeparator } from './log-layout.ts';
import { LOG_SEPARATORS } from './log-layout.ts';
import { isUtf8, logText, oneByteText } from './log-text.ts';
import { splitLine } from './split-line.ts';
import { unitOf } from './unit-words.ts';

/** Our choice: no preamble seen in an export is half as long. */
const HEAD_BYTES = 1 << 18;
const HEAD_LINES = 240;
/** Our choice: the widest log of a bench has a column for each of some hundred cells. A run keeps how they were read. */
const MOST_COLUMNS = 500;
/** Of a column's name or unit, in characters. Our choice: more does not show on a phone. */
const MOST_NAME = 200;
const COMMENT_MARKS = ['~', '#', '%', '//', '*'];

/**
 * Finds how the text of a log is laid out, from its first bytes. What a person has set is kept, the rest found around it.
 *
 * The rows are found first: under each separator and decimal mark, the lines that hold mostly numbers and are alike;
 * the pair that gives the most of them wins. Above the first such line stand a units row, if any, and the names.
 */
export function guessLayout(head: Uint8Array, choice: LayoutChoice = {}): LogLayout {
  const { encoding, byteOrderMarkBytes } = encodingOf(head);
  const bytes = oneByteText(head.subarray(byteOrderMarkBytes, HEAD_BYTES), encoding);
  const lineEnd = bytes.includes(10) || !bytes.includes(13) ? 'lf' : 'cr';
  const lines = logText(bytes, encoding === 'utf8' ? 'utf8' : 'latin1')
    .split(lineEnd === 'lf' ? '\n' : '\r')
    .slice(0, HEAD_LINES)
    .map((line) => line.replace(/\r$/, ''));
  const found = bestRows(lines, choice);
  const names = namesAbove(lines, found, choice.headerLine);
  return {
    encoding,
    byteOrderMarkBytes,
    lineEnd,
    separator: found.separator,
    decimalMark: found.decimalMark,
    ...names,
  };
}

function encodingOf(head: Uint8Array): { encoding: LogEncoding; byteOrderMarkBytes: number } {
  const [first, second, third] = head;
  if (first === 0xef && second === 0xbb && third === 0xbf) return { encoding: 'utf8', byteOrderMarkBytes: 3 };
  if (first === 0xff && second === 0xfe) return { encoding: 'utf16le', byteOrderMarkBytes: 2 };
  if (first === 0xfe && second === 0xff) return { encoding: 'utf16be', byteOrderMarkBytes: 2 };
  const start = head.subarray(0, 4096);
  const zeros = [0, 0];
  for (const [at, byte] of start.entries()) if (byte === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  // Plain text has no zero bytes; in UTF-16 nearly every second byte of it is one. A third of them: our choice.
  if ((zeros[1] ?? 0) > start.length / 6) return { encoding: 'utf16le', byteOrderMarkBytes: 0 };
  if ((zeros[0] ?? 0) > start.length / 6) return { encoding: 'utf16be', byteOrderMarkBytes: 0 };
  return { encoding: isUtf8(head.subarray(0, HEAD_BYTES)) ? 'utf8' : 'latin1', byteOrderMarkBytes: 0 };
}

interface FoundRows {
  separator: LogSeparator;
  decimalMark: DecimalMark;
  score: number;
  width: number;
  firstRow: number;
}

function bestRows(lines: readonly string[], choice: LayoutChoice): FoundRows {
  let best: FoundRows | null = null;
  for (const separator of choice.separator === undefined ? LOG_SEPARATORS : [choice.separator]) {
    for (const decimalMark of ['.', ','] as const) {
      if (choice.decimalMark !== undefined && choice.decimalMark !== decimalMark) continue;
      if (choice.decimalMark === undefined && separator === ',' && decimalMark === ',') continue;
      const found = rowsUnder(lines, { separator, decimalMark, after: choice.headerLine ?? 0 });
      if (best === null || found.score > best.score) best = found;
    }
  }
  return best ?? { separator: ',', decimalMark: '.', score: 0, width: 0, firstRow: 0 };
}

function rowsUnder(
  lines: readonly string[],
  { separator, decimalMark, after }: { separator: LogSeparator; decimalMark: DecimalMark; after: number },
): FoundRows {
  const rows = lines.map((line) =>
    isNote(line) ? [] : splitLine(line, separator).map((cell) => strictKind(cell, decimalMark)),
  );
  const scores = new Map<number, number>();
  for (const [at, kinds] of rows.entries()) {
    if (at < after || !isRow(kinds)) continue;
    scores.set(kinds.length, (scores.get(kinds.length) ?? 0) + count(kinds, 'number', 'time') - count(kinds, 'text'));
  }
  const [width = 0, score = 0] = [...scores].reduce((best, next) => (next[1] >= best[1] ? next : best), [0, 0]);
  const usual = usualKinds(rows.filter((kinds) => kinds.length === width && isRow(kinds)));
  let firstRow = rows.findIndex((kinds, at) => at >= after && isLike(kinds, usual) && goesOn(rows, at));
  if (firstRow < 0) firstRow = rows.findIndex((kinds, at) => at >= after && isLike(kinds, usual));
  // Rows that leave out their last cells are narrower or wider than most; none above is to be lost.
  while (firstRow > after && isLike(rows[firstRow - 1] ?? [], usual)) firstRow--;
  return { separator, decimalMark, score, width, firstRow: Math.max(firstRow, 0) };
}

/** Grouped thousands and glued units are read, but they prove no decimal mark. */
function strictKind(cell: string, decimalMark: DecimalMark): CellKind {
  const kind = cellKind(cell, decimalMark);
  const groups = decimalMark === '.' ? /,/ : /[.' ]/;
  return kind === 'number' && groups.test(plainCell(cell)) ? 'text' : kind;
}

function isRow(kinds: readonly CellKind[]): boolean {
  const held = count(kinds, 'number', 'time');
  return kinds.length >= 2 && held >= 2 && held > count(kinds, 'text');
}

function usualKinds(rows: readonly CellKind[][]): CellKind[] {
  return (rows[0] ?? []).map((_, column) => {
    const tally = new Map<CellKind, number>();
    for (const kinds of rows) {
      const kind = kinds[column] ?? 'empty';
      if (kind !== 'empty') tally.set(kind, (tally.get(kind) ?? 0) + 1);
    }
    return [...tally].reduce<[CellKind, number]>((best, next) => (next[1] > best[1] ? next : best), ['empty', 0])[0];
  });
}

/** Small tables in a preamble differ from the rows in what stands where. */
function isLike(kinds: readonly CellKind[], usual: readonly CellKind[]): boolean {
  if (!isRow(kinds) || Math.abs(kinds.length - usual.length) > 2) return false;
  const shared = kinds.slice(0, usual.length);
  const held = shared.filter((kind) => kind !== 'empty').length;
  return shared.filter((kind, column) => kind !== 'empty' && kind === usual[column]).length >= 0.7 * held;
}

/** Rows go on; a table in a preamble is over after a few lines. As wide within one cell, three in five of the next twenty: our choice. */
function goesOn(rows: readonly CellKind[][], at: number): boolean {
  const width = rows[at]?.length ?? 0;
  const next = rows.slice(at, at + 20).filter((kinds) => kinds.some((kind) => kind !== 'empty'));
  return next.filter((kinds) => kinds.length >= 2 && Math.abs(kinds.length - width) <= 1).length >= 0.6 * next.length;
}

function namesAbove(lines: readonly string[], found: FoundRows, headerChoice: number | null | undefined) {
  const { separator, decimalMark, firstRow, width } = found;
  const cells = (at: number) => splitLine(withoutMark(lines[at] ?? ''), separator).map(plainCell);
  const isNames = (at: number) => {
    const named = cells(at);
    const texts = named.filter((cell) => cell !== '' && cellKind(cell, decimalMark) === 'text').length;
    return (
      named.length >= Math.min(2, width) && named.length >= width - 2 && texts > named.length / 2 - 1 && texts >= 1
    );
  };
  const filled = (below: number) => {
    let at = below - 1;
    while (at >= 0 && cells(at).every((cell) => cell === '' || /^[-=_]{2,}$/.test(cell))) at--;
    return at;
  };
  const above = filled(firstRow);
  let header = headerChoice === undefined ? (above >= 0 && width > 0 && isNames(above) ? above : null) : null;
  let units: number | null = null;
  if (typeof headerChoice === 'number') {
    header = headerChoice - 1;
    if (above > header && isUnits(cells(above))) units = above;
  } else if (header !== null && isUnits(cells(header))) {
    const over = filled(header);
    if (over >= 0 && isNames(over)) [units, header] = [header, over];
  }
  const names = header === null ? [] : cells(header);
  const unitCells = units === null ? [] : cells(units);
  const columns = Math.min(MOST_COLUMNS, Math.max(width, names.findLastIndex((name) => name !== '') + 1));
  return {
    commentMark: commentMarkOf(lines, firstRow),
    headerLine: header === null ? null : header + 1,
    unitsLine: units === null ? null : units + 1,
    firstDataLine: firstRow + 1,
    columnNames: Array.from({ length: columns }, (_, column) => shortened(names[column])),
    columnUnits: Array.from({ length: columns }, (_, column) => shortened(unitCells[column])),
  };
}

/** Cut between characters, not within one. */
function shortened(name = ''): string {
  return name.length <= MOST_NAME ? name : [...name.slice(0, 2 * MOST_NAME)].slice(0, MOST_NAME).join('');
}

function isUnits(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  const known = filled.filter(
    (cell) => unitOf(cell) !== null || /^([[(]?[-1#][\])]?|hh?:mm(:ss)?.*|[dmy]+[./-].*)$/i.test(cell),
  );
  return filled.length > 0 && known.length >= 0.6 * filled.length && known.some((cell) => unitOf(cell) !== null);
}

function commentMarkOf(lines: readonly string[], firstRow: number): string | null {
  const notes = lines.filter((line, at) => isNote(line) && at <= firstRow + HEAD_LINES);
  return COMMENT_MARKS.find((mark) => notes.some((line) => line.startsWith(mark))) ?? null;
}

function isNote(line: string): boolean {
  return COMMENT_MARKS.some((mark) => line.startsWith(mark));
}

function withoutMark(line: string): string {
  const mark = COMMENT_MARKS.find((one) => line.startsWith(one));
  return mark === undefined ? line : line.slice(mark.length);
}

function count(kinds: readonly CellKind[], ...wanted: CellKind[]): number {
  return kinds.filter((kind) => wanted.includes(kind)).length;
}
