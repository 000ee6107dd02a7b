import { chapterWords as say } from '../../text/shoot-clock.ts';
import type { Disclosure } from '../model/disclosure.ts';
import { inOneLine } from './chapter-text.ts';
import type { TakeChapters } from './chapters-of.ts';

/**
 * The chapters of a take as a WebVTT file: each cue lasts to the next one's start, the last to the end of the take.
 *
 * Source  WebVTT: The Web Video Text Tracks Format, W3C Candidate Recommendation, 4 April 2019: section 4.1, WebVTT file
 *         structure (comment blocks, cue identifiers, timings, timestamps), and 4.2.3, WebVTT chapter title text (one
 *         line; & and < written as character references; no "-->")
 * Check   tests/sheet/chapters/chapters-vtt.test.ts
 */
export function chaptersVtt(
  { chapters, endMs }: TakeChapters,
  head: { title: string; disclosure: Disclosure },
): string {
  const cues = chapters.map(({ startMs, title }, place) => {
    const untilMs = chapters[place + 1]?.startMs ?? endMs;
    return `${place + 1}\n${timestamp(startMs)} --> ${timestamp(untilMs)}\n${escaped(inOneLine(title)) || say.nameless}`;
  });
  const note = [head.title, head.disclosure.line].map(inOneLine).filter(Boolean).join('\n');
  return `${['WEBVTT', `NOTE\n${note}`, ...cues].join('\n\n')}\n`;
}

/** hh:mm:ss.ttt; hours take as many digits as they need, at least two. */
function timestamp(atMs: number): string {
  const two = (count: number) => String(Math.floor(count)).padStart(2, '0');
  const wholeMs = Math.round(atMs);
  const time = [wholeMs / 3_600_000, (wholeMs / 60_000) % 60, (wholeMs / 1000) % 60].map(two).join(':');
  return `${time}.${String(wholeMs % 1000).padStart(3, '0')}`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
