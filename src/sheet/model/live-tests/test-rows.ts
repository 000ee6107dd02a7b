import { formatDay } from '../../../text/format-day.ts';
import { testWords as say } from '../../../text/live-tests/results/test.ts';
import type { ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What every test carries. */
export interface AnyTest {
  id: string;
  on?: string | undefined;
  instrumentId?: string | undefined;
  note?: string | undefined;
}

/** A row; none where there is nothing to say: absence is never zero. */
export function row(label: string, value: string | null | undefined, note?: string | null): ResultRow[] {
  if (value === null || value === undefined || value === '') return [];
  return [note === null || note === undefined || note === '' ? { label, value } : { label, value, note }];
}

/** A row of a figure, if there is one. */
export function figureRow(
  label: string,
  value: number | null | undefined,
  { say: words, note }: { say: (value: number) => string; note?: string | null },
): ResultRow[] {
  return row(label, value === null || value === undefined ? null : words(value), note);
}

/** "Run 2", as tests of one kind are counted on screen and sheet. */
export function testName(one: string, all: readonly { id: string }[], id: string): string {
  return say.numbered(one, all.findIndex((test) => test.id === id) + 1);
}

/** "Run 2 · hard · 3 November 2026". */
export function testTitle(name: string, { on }: Pick<AnyTest, 'on'>, ...more: (string | null | undefined)[]): string {
  const parts = [name, ...more, on === undefined ? null : formatDay(on)];
  return say.titled(parts.flatMap((part) => (part === null || part === undefined || part === '' ? [] : [part])));
}

/** Instrument and note, the last rows of every test. */
export function closingRows(test: AnyTest, { tests }: LiveContext): ResultRow[] {
  const instrument = tests.instruments.find(({ id }) => id === test.instrumentId);
  return [...row(say.labels.instrument, instrument?.name), ...row(say.labels.note, test.note?.trim())];
}

/** All of one kind, or the one that is asked for. */
export function only<T>(all: readonly T[], id: string | undefined, idOf: (one: T) => string): readonly T[] {
  return id === undefined ? all : all.filter((one) => idOf(one) === id);
}
