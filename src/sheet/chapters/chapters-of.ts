import type { PackRecord, RecordTake } from '../../record/pack-record.ts';
import { chapterWords as say } from '../../text/shoot-clock.ts';
import { markTitle, type Titled } from './mark-title.ts';

/** Marks nearer to a chapter's start than this are part of it. Our choice: nobody can jump to less than a second. */
const ONE_CHAPTER_MS = 1000;
/** What programs that read lists of chapters commonly ask for. Common practice, no source. */
const COMMON_LEAST_MS = 10_000;

export interface Chapter {
  /** In the recording. */
  startMs: number;
  title: string;
}

export interface TakeChapters {
  /** In order; the first begins at 0. */
  chapters: Chapter[];
  /** Where the take ends in the recording, after the last start. */
  endMs: number;
  /** Marks that lie before the recording's start by the offset and were put at 0. */
  beforeStartCount: number;
  /** Marks of what is no longer in the record: left out. */
  goneCount: number;
  /** Chapters shorter than 10 s. */
  shortCount: number;
}

/**
 * The chapters of one take in the time of its recording: one for each mark, those nearer than a second to a start in one,
 * and "Start" where nothing was marked at the beginning. Null where there is no such take or it still runs.
 */
export function chaptersOf(record: PackRecord, titled: Omit<Titled, 'record'>, takeId: string): TakeChapters | null {
  const take = record.takes.find(({ id }) => id === takeId);
  if (take?.endedAtMs === undefined) return null;
  const named = take.marks.map((mark) => ({
    atMs: inRecordingMs(take, mark.atMs),
    title: markTitle(mark, { ...titled, record }, take),
  }));
  const chapters: Chapter[] = [];
  for (const { atMs, title } of named) {
    if (title === null) continue;
    const startMs = Math.max(0, atMs);
    const last = chapters.at(-1);
    if (last === undefined && startMs >= ONE_CHAPTER_MS) chapters.push({ startMs: 0, title: say.start });
    const joins = chapters.at(-1);
    if (joins === undefined) chapters.push({ startMs: 0, title });
    else if (startMs - joins.startMs < ONE_CHAPTER_MS) joins.title = say.joined(joins.title, title);
    else chapters.push({ startMs, title });
  }
  if (chapters.length === 0) chapters.push({ startMs: 0, title: say.start });
  const lastMs = chapters.at(-1)?.startMs ?? 0;
  const endMs = Math.max(inRecordingMs(take, take.endedAtMs), lastMs + ONE_CHAPTER_MS);
  const ends = [...chapters.slice(1).map(({ startMs }) => startMs), endMs];
  return {
    chapters,
    endMs,
    beforeStartCount: named.filter(({ atMs, title }) => title !== null && atMs < 0).length,
    goneCount: named.filter(({ title }) => title === null).length,
    shortCount: chapters.filter(({ startMs }, place) => (ends[place] ?? endMs) - startMs < COMMON_LEAST_MS).length,
  };
}

/** A moment of the phone's clock in the time of a take's recording; below 0 where the recording began later. */
export function inRecordingMs(take: Pick<RecordTake, 'startedAtMs' | 'offsetMs'>, atMs: number): number {
  return atMs - take.startedAtMs + (take.offsetMs ?? 0);
}
