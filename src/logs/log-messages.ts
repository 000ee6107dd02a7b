import type { LayoutChoice } from './log-layout.ts';
import type { LogMapping } from './log-mapping.ts';
import type { LogReading } from './log-reading.ts';
import type { LogCurve, LogRun } from './log-run.ts';
import type { RunEndHelp } from './make-run.ts';

/** Page to worker. One log per worker: its bytes and its last reading stay there. */
export type ToLogWorker =
  | { kind: 'open'; jobId: number; bytes: ArrayBuffer }
  | { kind: 'guess'; jobId: number; choice: LayoutChoice }
  | { kind: 'preview'; jobId: number; mapping: LogMapping }
  | { kind: 'read'; jobId: number; mapping: LogMapping; help: RunEndHelp }
  | { kind: 'curve'; jobId: number; runIndex: number; maxPoints: number }
  | { kind: 'cancel'; jobId: number };

/** Worker to page: progress as it comes, then one end of each job. */
export type FromLogWorker =
  | { kind: 'progress'; jobId: number; doneFrac: number }
  | { kind: 'guessed'; jobId: number; guessed: GuessedLog }
  | { kind: 'preview'; jobId: number; preview: LogPreview }
  | { kind: 'read'; jobId: number; summary: LogSummary }
  | { kind: 'curve'; jobId: number; curve: LogCurve }
  | { kind: 'cancelled'; jobId: number }
  | { kind: 'failed'; jobId: number; message: string };

export interface GuessedLog {
  mapping: LogMapping;
  preview: LogPreview;
}

/** The start of a log as it is laid out, to look at before it is read. */
export interface LogPreview {
  /** Lines above the first row, header and units row among them. */
  above: { line: number; text: string }[];
  rows: { line: number; cells: string[] }[];
}

/** A reading without its long columns, which stay in the worker. */
export interface LogSummary extends Omit<LogReading, 'columns'> {
  rowCount: number;
  runs: LogRun[];
  /** The whole log, one curve for each stretch; at most `OVERVIEW_POINTS` together. */
  overview: LogCurve[];
}

export const OVERVIEW_POINTS = 2000;
