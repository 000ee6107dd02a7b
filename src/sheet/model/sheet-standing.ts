import { nextRevision } from '../../record/fold-closings.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { formatDay, formatMoment, localDay } from '../../text/format-day.ts';
import { sheetClosingWords as say } from '../../text/sheet-closing.ts';
import type { ParagraphBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

export type RecordClosing = PackRecord['closings'][number];

type Opened = { closing: RecordClosing; next: number; reason: string; openedAtMs: number };

/** How the sheet that is shown stands among its revisions. */
export type Standing =
  | { is: 'open' }
  | ({ is: 'revising' } & Opened)
  | { is: 'closed'; closing: RecordClosing }
  /** The newest revision as it was closed, while the next is in the making. */
  | ({ is: 'reopened' } & Opened)
  | { is: 'replaced'; closing: RecordClosing; by: RecordClosing };

type Closed = Pick<SheetContext, 'record' | 'shownRevision'>;

export function standingOf({ record, shownRevision }: Closed): Standing {
  const { closings, sheet } = record;
  const newest = closings.at(-1);
  const shown = closings.find(({ sha256 }) => sha256 === shownRevision);
  if (newest === undefined || sheet.now === 'open') return { is: 'open' };
  if (shown !== undefined && shown !== newest)
    return { is: 'replaced', closing: shown, by: successorOf(shown, record) };
  if (sheet.now === 'closed') return { is: 'closed', closing: newest };
  const { reason, openedAtMs } = sheet;
  const opened = { closing: newest, next: nextRevision(record), reason, openedAtMs };
  return { is: shown === undefined ? 'revising' : 'reopened', ...opened };
}

/** What took the place of a closing; where two phones closed at once, the one that counts. */
export function successorOf(closing: RecordClosing, { closings }: Pick<PackRecord, 'closings'>): RecordClosing {
  return closings.findLast(({ after }) => after === closing.sha256) ?? closings.at(-1) ?? closing;
}

/** Marks of the head: how the sheet stands, first, and what was attached to it. */
export function standingMarks(standing: Standing, context: SheetContext): string[] {
  const { attachments, closings } = context.record;
  const { marks } = say;
  const here = 'closing' in standing ? standing.closing.sha256 : null;
  const corrections = attachments.filter(({ kind }) => kind === 'correction').map(({ to }) => to);
  const elsewhere = corrections.filter((to) => to !== here);
  const corrected = new Set(elsewhere.map((to) => closings.find(({ sha256 }) => sha256 === to)?.revision));
  return [
    markOf(standing),
    ...(isGrown(standing, context) ? [marks.sinceClosing] : []),
    ...(corrections.length > elsewhere.length ? [marks.correction] : []),
    ...[...corrected].map((revision) => (revision === undefined ? marks.correction : marks.correctionTo(revision))),
    ...(attachments.some(({ kind }) => kind === 'makerReply') ? [marks.makerReply] : []),
  ].filter((mark, place, all) => all.indexOf(mark) === place);
}

/** That more has come in since, in a sentence; null where nothing has. */
export function sinceClosingWords(standing: Standing, context: SheetContext): string | null {
  const { sinceClosing = 0 } = context;
  return isGrown(standing, context) ? say.standing.sinceClosing(sinceClosing) : null;
}

/** The same in a sentence: a caution where another sheet counts, or more has come in. */
export function standingParagraph(standing: Standing, context: SheetContext): ParagraphBlock {
  const { utcOffsetMinutes } = context;
  const moment = (atMs: number) => formatMoment(atMs, utcOffsetMinutes);
  const opened = ({ closing, openedAtMs, ...rest }: Opened) => ({
    ...rest,
    revision: closing.revision,
    since: moment(openedAtMs),
  });
  const paragraph = (text: string, tone: ParagraphBlock['tone']): ParagraphBlock => ({ kind: 'paragraph', text, tone });
  switch (standing.is) {
    case 'open':
      return paragraph(say.standing.open, 'muted');
    case 'revising':
      return paragraph(say.standing.revising(opened(standing)), 'caution');
    case 'reopened':
      return paragraph(say.standing.reopened(opened(standing)), 'caution');
    case 'replaced':
      return paragraph(replacedWords(standing, utcOffsetMinutes), 'caution');
    case 'closed': {
      const { revision, closedAtMs } = standing.closing;
      const closed = say.standing.closed(revision, moment(closedAtMs));
      const since = sinceClosingWords(standing, context);
      return since === null ? paragraph(closed, 'muted') : paragraph(`${since} ${closed}`, 'caution');
    }
  }
}

function replacedWords({ closing, by }: { closing: RecordClosing; by: RecordClosing }, offset: number): string {
  if (by.after === closing.sha256) {
    const on = formatDay(localDay(by.closedAtMs, offset));
    return say.standing.replaced(closing.revision, { revision: by.revision, on, reason: by.reason });
  }
  const counts = { revision: by.revision, on: formatMoment(by.closedAtMs, offset) };
  return say.standing.besides(closing.revision, formatMoment(closing.closedAtMs, offset), counts);
}

/** "Closed, revision 2", "not closed". */
export function markOf(standing: Standing): string {
  const { marks } = say;
  switch (standing.is) {
    case 'open':
      return marks.open;
    case 'revising':
      return marks.revising(standing.next);
    case 'closed':
    case 'reopened':
      return marks.closed(standing.closing.revision);
    case 'replaced':
      return marks.replaced(standing.closing.revision);
  }
}

function isGrown(standing: Standing, { sinceClosing = 0 }: SheetContext): boolean {
  return standing.is === 'closed' && sinceClosing > 0;
}
