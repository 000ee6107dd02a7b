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
/** Lines kept for the titles of those that are not said at length. */
const FURTHER_LINES = 2;

export interface FactsRoom {
  /** Body lines for the whole list, and what stands between two entries, in lines. */
  lines: number;
  gapLines: number;
  widthEm: number;
}

/** The findings worst first, each in at most two lines with its readings; past the room, the rest by title. */
export function letterFacts(context: SheetContext, { lines, gapLines, widthEm }: FactsRoom): string[] {
  const { findings } = context.grading;
  if (findings.length === 0) return [say.noFinding];
  const said = findings.map((finding) => cutTo(findingWords(finding, context), { lines: FINDING_LINES, widthEm }));
  const taken = (texts: readonly string[]) => texts.reduce((sum, text) => sum + linesOf(text, widthEm) + gapLines, 0);
  if (taken(said) <= lines) return said;
  const shown: string[] = [];
  for (const text of said) {
    if (taken([...shown, text]) > lines - FURTHER_LINES - gapLines) break;
    shown.push(text);
  }
  const titles = findings.slice(shown.length).map(({ itemId }) => context.itemOf(itemId).title);
  return [...shown, cutTo(say.further(titles), { lines: FURTHER_LINES, widthEm })];
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
