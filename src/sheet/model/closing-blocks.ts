import { formatMoment, formatOffset } from '../../text/format-day.ts';
import { formatScore } from '../../text/format-number.ts';
import { sheetClosingWords as say } from '../../text/sheet-closing.ts';
import { verdictWords } from '../../text/verdict.ts';
import type { Block, HashBlock, TableBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';
import { type RecordClosing, sinceClosingWords, standingOf, standingParagraph, successorOf } from './sheet-standing.ts';

/** "Closed and revised": how it stands, then each revision with its day, reason, score and SHA-256, the newest first. */
export function closingBlocks(context: SheetContext): Block[] {
  const { closings } = context.record;
  const standing = standingOf(context);
  if (standing.is === 'open') return [{ ...standingParagraph(standing, context), tone: 'plain' }];
  const since = sinceClosingWords(standing, context);
  const shown = standing.is === 'revising' ? null : standing.closing;
  const { otherLines = 0 } = context;
  return [
    // Of the sheet that counts no more need be said than what follows.
    ...(standing.is === 'closed' ? [] : [standingParagraph(standing, context)]),
    ...(since === null ? [] : [caution(since)]),
    ...(otherLines === 0 ? [] : [caution(say.standing.otherLines(otherLines))]),
    ...closings
      .toReversed()
      .flatMap((closing): Block[] => [
        { kind: 'subhead', text: say.revision(closing.revision, closing === shown) },
        { kind: 'table', rows: rowsOf(closing, context) },
        hashBlock(say.sha256(closing.revision), closing.sha256),
      ]),
    { kind: 'paragraph', text: say.check, tone: 'muted' },
  ];
}

function caution(text: string): Block {
  return { kind: 'paragraph', text, tone: 'caution' };
}

/** Groups of four, to be read aloud and compared. */
function hashBlock(label: string, sha256: string): HashBlock {
  return { kind: 'hash', label, groups: sha256.match(/.{4}/g) ?? [] };
}

function rowsOf(closing: RecordClosing, context: SheetContext): TableBlock['rows'] {
  const { record, utcOffsetMinutes } = context;
  const { closedAtMs, appVersion, after, reason } = closing;
  const moment = (atMs: number) => formatMoment(atMs, utcOffsetMinutes);
  const named = ({ revision, closedAtMs: atMs }: RecordClosing) => say.revisionOf(revision, moment(atMs));
  const before = record.closings.find(({ sha256 }) => sha256 === after);
  const by = successorOf(closing, record);
  return [
    {
      label: say.closed,
      value: say.closedAt(moment(closedAtMs), formatOffset(utcOffsetMinutes)),
      note: say.closedWith(appVersion),
    },
    ...(after === undefined ? [] : [{ label: say.takesPlaceOf, value: before ? named(before) : say.unknownRevision }]),
    ...(reason === undefined ? [] : [{ label: say.reason, value: reason.trim() }]),
    ...(by.after === closing.sha256 ? [{ label: say.replacedBy, value: named(by) }] : []),
    { label: say.verdict, value: verdictWords(closing.verdict).title },
    { label: say.score, value: scoreWords(closing) },
  ];
}

/** "14.5–19.5", as everywhere on the sheet. */
function scoreWords({ verdict, score, settled }: RecordClosing): string {
  if (score !== null) return formatScore(score, settled);
  return verdict.high === 'stop' ? say.withheld : say.noScore;
}
