import { momentAfterMs } from '../../record/moment-after.ts';
import { forgetOpenPack, opened } from '../state/open-pack.ts';
import { PackSession } from '../state/pack-session.ts';
import { store } from '../state/store.ts';
import { heldSession } from '../state/unsaved-sessions.ts';
import { carryOverChange, withReopening } from './carry-over-change.ts';
import { nextSlice } from './next-slice.ts';
import type { Surveyed } from './survey.ts';

export interface CarriedOver {
  carriedCount: number;
  /** Label of the one that was not saved: there the work ended. */
  notSaved: string | null;
  /** Labels of those that are graded by another checklist by now. */
  changedMeanwhile: string[];
}

/** Carries packs over one by one, each by one change that can be undone on its own. */
export async function carryOverPacks(
  packs: readonly Surveyed[],
  given: { reason: string; signal: AbortSignal; onProgress: (done: number, all: number) => void },
): Promise<CarriedOver> {
  const result: CarriedOver = { carriedCount: 0, notSaved: null, changedMeanwhile: [] };
  for (const [place, pack] of packs.entries()) {
    if (given.signal.aborted) break;
    given.onProgress(place, packs.length);
    await nextSlice();
    const outcome = await carryOver(pack, given.reason);
    if (outcome === 'carried') result.carriedCount++;
    if (outcome === 'changedMeanwhile') result.changedMeanwhile.push(pack.label);
    if (outcome === 'notSaved') return { ...result, notSaved: pack.label };
  }
  return result;
}

/** From the record as it is at this moment: another tab may have written since it was surveyed. */
async function carryOver(
  { packId, from, to }: Surveyed,
  reason: string,
): Promise<'carried' | 'notSaved' | 'changedMeanwhile'> {
  const session = await sessionOf(packId, from);
  const record = session.record.value;
  if (record.checklist?.sha256 !== from.sha256) return 'changedMeanwhile';
  const change = withReopening(carryOverChange(record, to), record, {
    reason,
    openedAtMs: momentAfterMs(record, Date.now()),
  });
  const saved = await session.put(change);
  forgetOpenPack(packId);
  return saved ? 'carried' : 'notSaved';
}

/** The pack on the screen keeps its session, and so does one that is held: what is not saved there yet goes first. */
async function sessionOf(packId: string, from: Surveyed['from']): Promise<PackSession> {
  const now = opened.value;
  if (now.state === 'open' && now.session.packId === packId) return now.session;
  const held = heldSession(packId);
  if (held !== null) return held;
  const entries = await store().entriesOf(packId);
  return new PackSession(packId, from, entries);
}
