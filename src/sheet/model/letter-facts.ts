import type { Finding } from '../../grading/grading.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { letterWords as say } from '../../text/letter.ts';
import { RISK_WORDS } from '../../text/risk.ts';
import { sheetWords } from '../../text/sheet.ts';
import { foundWithReadings } from './measured-words.ts';
import type { SheetContext } from './sheet-context.ts';
import { cutTo, linesOf } from './text-room.ts';

/** Lines of one finding at most: what is longer stands whole on the sheet. */
const FINDING_LINES = 2;
/** A note gets a line more where there is room; of one cut shorter than this nothing can be understood. Our choice. */
const NOTE_LINES = 1;
const SHORTEST_NOTE = 24;
/** Lines kept for the titles of those that are not said at length. */
const FURTHER_LINES = 2;

export interface FactsRoom {
  /** Body lines for the whole list, and what stands between two entries, in lines. */
  lines: number;
  gapLines: number;
  widthEm: number;
}

/**
 * The findings worst first, each in at most two lines with its readings; past the room, the rest by title. A grade's
 * sentence may name several faults and only the tester's note says which: what room is left goes to notes, worst first.
 */
export function letterFacts(context: SheetContext, { lines, gapLines, widthEm }: FactsRoom): string[] {
  const { findings } = context.grading;
  if (findings.length === 0) return [say.noFinding];
  const taken = (texts: readonly string[]) => texts.reduce((sum, text) => sum + linesOf(text, widthEm) + gapLines, 0);
  const bare = findings.map((finding) => cutTo(findingWords(finding, context), { lines: FINDING_LINES, widthEm }));
  const isAll = taken(bare) <= lines;
  let count = bare.length;
  while (!isAll && count > 0 && taken(bare.slice(0, count)) > lines - FURTHER_LINES - gapLines) count -= 1;
  const titles = findings.slice(count).map(({ itemId }) => context.itemOf(itemId).title);
  const said = [
    ...bare.slice(0, count),
    ...(isAll ? [] : [cutTo(say.further(titles), { lines: FURTHER_LINES, widthEm })]),
  ];
  for (const [place, { itemId }] of findings.slice(0, count).entries()) {
    const free = Math.floor(lines - taken(said));
    said[place] = withNote(said[place] ?? '', context.record.answers[itemId]?.note, {
      moreLines: Math.min(NOTE_LINES, Math.max(0, free)),
      widthEm,
    });
  }
  return said;
}

function withNote(text: string, note: string | undefined, room: { moreLines: number; widthEm: number }): string {
  if (!note?.trim()) return text;
  const whole = `${text} ${say.noted(note.trim())}`;
  const cut = cutTo(whole, { lines: linesOf(text, room.widthEm) + room.moreLines, widthEm: room.widthEm });
  const isTold = cut.length === whole.length || cut.length >= text.length + say.noted('').length + SHORTEST_NOTE;
  return isTold ? cut : text;
}

function findingWords(finding: Finding, context: SheetContext): string {
  const item = context.itemOf(finding.itemId);
  const grade = GRADE_WORDS[finding.grade];
  const { measured } = context.resultOf(finding.itemId);
  const found = foundWithReadings(item, measured, context.record.answers[finding.itemId]);
  const marks = [
    finding.sure ? grade : sheetWords.findings.mayBe(grade),
    ...(finding.risk === null ? [] : [say.risk(RISK_WORDS[finding.risk])]),
  ];
  const words = say.finding(item.title, marks, item.grades[finding.grade] ?? item.title);
  return found === null ? words : `${words} ${say.reading(found)}`;
}
