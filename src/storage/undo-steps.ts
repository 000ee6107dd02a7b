import { promisifyRequest } from 'idb-keyval';
import { canonicalJson } from '../record/canonical-json.ts';
import type { Entry } from '../schema/entry.ts';
import type { Stamp } from '../schema/stamp.ts';
import { rangeUnder } from './pack-range.ts';
import type { EntriesBeginning } from './store.ts';
import type { StoredClock } from './stored-clock.ts';

/** Steps kept a pack. DESIGN §9. */
const MAX_STEPS = 50;

/** What one change wrote, and what stood there before (null: nothing). */
export interface UndoStep {
  label: string;
  rows: { before: Entry | null; after: Entry }[];
  /** The tab that wrote it; steps of earlier versions have none. */
  tab?: string;
}

/**
 * One tab on the database. It takes back its own steps and those it found when it was opened, never one that another
 * tab has made since: whoever taps Undo means what this screen did.
 */
export interface Tab {
  id: string;
  /** The newest stamp drawn before it was opened; null when there was none. */
  openedAt: Stamp | null;
}

/** Keeps a step under its stamp and lets the oldest beyond 50 go. */
export async function keepStep(tx: IDBTransaction, packId: string, at: string, step: UndoStep): Promise<void> {
  const steps = tx.objectStore('undo');
  steps.put(step, [packId, at]);
  const count = await promisifyRequest(steps.count(rangeUnder(packId)));
  if (count <= MAX_STEPS) return;
  const oldest = await promisifyRequest(steps.getAllKeys(rangeUnder(packId), count - MAX_STEPS));
  for (const key of oldest) steps.delete(key);
}

/** Lets go every step that touched one of these entries, whichever tab made it. */
export async function dropSteps(
  tx: IDBTransaction,
  packId: string,
  touched: readonly EntriesBeginning[],
): Promise<void> {
  const isTouched = ({ key: [, subject, part] }: Entry) =>
    touched.some((one) => one.subject === subject && part.startsWith(one.partBegins));
  const request = tx.objectStore('undo').openCursor(rangeUnder(packId));
  for (;;) {
    const cursor = await promisifyRequest(request);
    if (cursor === null) return;
    if ((cursor.value as UndoStep).rows.some(({ after }) => isTouched(after))) cursor.delete();
    cursor.continue();
  }
}

export async function newestLabel(tx: IDBTransaction, packId: string, tab: Tab): Promise<string | null> {
  const cursor = await newestOf(tx, packId, tab);
  return cursor === null ? null : (cursor.value as UndoStep).label;
}

/**
 * Takes the newest step back: writes each earlier value with a new stamp, a tombstone where there was nothing, and
 * lets the step go. A value that something else has changed since (another tab, a restore) stays as it is.
 * Null when there is no step.
 */
export async function takeStepBack(
  tx: IDBTransaction,
  packId: string,
  { clock, tab }: { clock: StoredClock; tab: Tab },
): Promise<Entry[] | null> {
  const cursor = await newestOf(tx, packId, tab);
  if (cursor === null) return null;
  const { rows } = cursor.value as UndoStep;
  cursor.delete();
  const entries = tx.objectStore('entries');
  const written: Entry[] = [];
  for (const { before, after } of rows) {
    const present = await promisifyRequest<Entry | undefined>(entries.get(after.key));
    if (present === undefined || !sameValue(present, after)) continue;
    const at = clock.draw();
    const by = at.slice(-32);
    const entry: Entry = before === null ? { key: after.key, v: null, at, by, gone: true } : { ...before, at, by };
    entries.put(entry, entry.key);
    written.push(entry);
  }
  return written;
}

/** The newest step that this tab may take back. */
async function newestOf(tx: IDBTransaction, packId: string, tab: Tab): Promise<IDBCursorWithValue | null> {
  const request = tx.objectStore('undo').openCursor(rangeUnder(packId), 'prev');
  for (;;) {
    const cursor = await promisifyRequest(request);
    if (cursor === null) return null;
    const [, at] = cursor.key as [string, Stamp];
    const isOlder = tab.openedAt !== null && at <= tab.openedAt;
    if (isOlder || (cursor.value as UndoStep).tab === tab.id) return cursor;
    cursor.continue();
  }
}

/** By value, not by stamp: a later step taken back has written this one's value again under a new stamp. */
function sameValue(a: Entry, b: Entry): boolean {
  return a.gone === b.gone && canonicalJson(a.v) === canonicalJson(b.v);
}
