import type { Attachment, Closing, Reopening } from '../schema/closing.ts';
import type { Entry, Subject } from '../schema/entry.ts';
import type { PackRecord, SheetStanding } from './pack-record.ts';

/** Closings, reopenings and attachments of one record, and how its sheet stands. Takes live, checked entries. */
export function foldClosings(
  live: readonly Entry[],
): Pick<PackRecord, 'closings' | 'reopenings' | 'attachments' | 'sheet'> {
  // An entry of these subjects is written once, so its stamp is when it happened.
  const closings = inOrder(live, 'closing').map(({ key, v }) => ({ ...(v as Closing), sha256: key[2] }));
  const reopenings = inOrder(live, 'reopening').map(({ key, v }) => ({ ...(v as Reopening), id: key[2] }));
  const attachments = inOrder(live, 'attachment').map(({ key, v }) => ({ ...(v as Attachment), id: key[2] }));
  return { closings, reopenings, attachments, sheet: standingOf(closings, reopenings) };
}

/** The number that the next closing gets: one more than any, so that it is free even where two phones closed the same one. */
export function nextRevision({ closings }: Pick<PackRecord, 'closings'>): number {
  return closings.reduce((highest, { revision }) => Math.max(highest, revision), 0) + 1;
}

/** The newest closing counts, and of what opened it again the last. */
function standingOf(closings: PackRecord['closings'], reopenings: PackRecord['reopenings']): SheetStanding {
  const newest = closings.at(-1);
  if (newest === undefined) return { now: 'open' };
  const { sha256, revision } = newest;
  const opened = reopenings.findLast(({ after }) => after === sha256);
  if (opened === undefined) return { now: 'closed', sha256, revision };
  return { now: 'revising', sha256, revision, reason: opened.reason, openedAtMs: opened.openedAtMs };
}

function inOrder(live: readonly Entry[], subject: Subject): Entry[] {
  const found = live.filter(({ key }) => key[1] === subject);
  return found.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}
