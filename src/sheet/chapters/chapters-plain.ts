import { formatElapsed } from '../../text/format-elapsed.ts';
import { chapterWords as say } from '../../text/shoot-clock.ts';
import type { Disclosure } from '../model/disclosure.ts';
import { inOneLine } from './chapter-text.ts';
import type { TakeChapters } from './chapters-of.ts';

/**
 * The chapters of a take as lines for the description of a video, "0:00 Start", "1:02:03 Cell vents: weak", and the
 * disclosure as the last line.
 *
 * Source  common practice, no source
 * Check   tests/sheet/chapters/chapters-plain.test.ts
 */
export function chaptersPlain({ chapters }: TakeChapters, disclosure: Disclosure): string {
  const lines = chapters.map(({ startMs, title }) => `${formatElapsed(startMs)} ${inOneLine(title) || say.nameless}`);
  return `${[...lines, '', inOneLine(disclosure.line)].join('\n')}\n`;
}
