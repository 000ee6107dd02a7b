import { openStore } from '../../storage/open-store.ts';
import type { OpenResult, Store } from '../../storage/store.ts';
import { refreshBench } from './bench.ts';
import { closedRecords } from './closed-records.ts';
import { keepAgain } from './kept.ts';
import { otherTabWrote } from './other-tab.ts';
import { setStore, store } from './store.ts';
import { saveAgain } from './unsaved-sessions.ts';
import { vanished } from './vanished.ts';

/** Takes the opened records into use, and follows what other tabs and the browser do to them. */
export function takeIntoUse(result: Extract<OpenResult, { ok: true }>): void {
  const records = result.store;
  setStore(records);
  vanished.value = result.vanished;
  records.onOtherTab((packId) => {
    void refreshBench();
    otherTabWrote.value = { packId };
  });
  records.onClosed((because) => {
    // One that was put aside for another has nothing more to say.
    if (isInUse(records)) closedRecords.value = because;
  });
}

/** Opens the records again after the browser had closed them. If they are empty now, nothing is written before it is asked for. */
export async function reach(): Promise<'open' | 'notYet' | { packCount: number }> {
  const before = store();
  const result = await openStore();
  if (!result.ok) {
    console.error('records: not opened again', result.problem, result.detail);
    if (result.problem === 'newer') closedRecords.value = 'old';
    return 'notYet';
  }
  before.close();
  takeIntoUse(result);
  if (result.vanished) return { packCount: result.vanished.packCount };
  await goOn();
  return 'open';
}

/** The records are in reach: what has waited for them is written. */
export async function goOn(): Promise<void> {
  closedRecords.value = null;
  await saveAgain();
  await keepAgain();
  await refreshBench();
}

function isInUse(records: Store): boolean {
  return store() === records;
}
