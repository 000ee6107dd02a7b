/** How the text of a log is laid out. Plain JSON, so that it can be stored with the run it was read for. */
export interface LogLayout {
  encoding: LogEncoding;
  /** Bytes of a byte order mark at the start, 0 without one. */
  byteOrderMarkBytes: number;
  lineEnd: LineEnd;
  separator: LogSeparator;
  decimalMark: DecimalMark;
  /** Lines that begin with this are notes, wherever they stand; the header may be one of them. */
  commentMark: string | null;
  /** Line numbers count from 1, as an editor shows them. */
  headerLine: number | null;
  unitsLine: number | null;
  firstDataLine: number;
  /** As printed; empty where the column has no name. */
  columnNames: string[];
  /** From the units row; empty where there is none. */
  columnUnits: string[];
}

export const LOG_ENCODINGS = ['utf8', 'latin1', 'utf16le', 'utf16be'] as const;
export type LogEncoding = (typeof LOG_ENCODINGS)[number];

/** A single space stands for any run of spaces. */
export const LOG_SEPARATORS = ['\t', ';', ',', '|', ' '] as const;
export type LogSeparator = (typeof LOG_SEPARATORS)[number];

export const DECIMAL_MARKS = ['.', ','] as const;
export type DecimalMark = (typeof DECIMAL_MARKS)[number];

export type LineEnd = 'lf' | 'cr';

/** What a person may set right about the layout; the rest is found again around it. */
export interface LayoutChoice {
  separator?: LogSeparator;
  decimalMark?: DecimalMark;
  /** `null`: the log has no header. */
  headerLine?: number | null;
}
