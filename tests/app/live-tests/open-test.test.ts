import { beforeEach, describe, expect, it } from 'vitest';
import { drainKind } from '../../../src/app/live-tests/kinds/drain.ts';
import { tripKind } from '../../../src/app/live-tests/kinds/trip.ts';
import { openTest } from '../../../src/app/live-tests/open-test.ts';
import type { PackSession, PendingChange } from '../../../src/app/state/pack-session.ts';
import { provisionalEntries } from '../../../src/app/state/provisional.ts';
import { setStore } from '../../../src/app/state/store.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { Store } from '../../../src/storage/store.ts';

const PACK = '0123456789abcdef0123456789abcdef';
const ID = 'f'.repeat(32);
const DEVICE = '1'.repeat(32);

let kept: Map<string, unknown>;
let changes: PendingChange[];
let entries: Entry[];
let packCount = 0;
/** Writes nothing until told to: the change is on the screen all the same, as in the app. */
let session: PackSession;
/** Lets what waits be written under real stamps. */
function written(): void {
  entries = entries.map((entry, place) => {
    if (!entry.at.startsWith('999')) return entry;
    const at = `000001790000000.${String(place).padStart(6, '0')}.${DEVICE}`;
    const v = entry.v as { made?: string } | null;
    return { ...entry, at, v: v?.made?.startsWith('999') ? { ...v, made: at } : v };
  });
}

beforeEach(() => {
  kept = new Map();
  changes = [];
  // Another pack each time: the unfinished of one are remembered for as long as the page lives.
  packCount += 1;
  const packId = PACK.slice(0, 30) + String(packCount).padStart(2, '0');
  entries = [{ key: [packId, 'pack', 'made'], v: {}, at: `000001780000000.000000.${DEVICE}`, by: DEVICE }];
  setStore({
    kept: async (name: string) => kept.get(name) ?? null,
    keep: async (name: string, value: unknown) => void (value === null ? kept.delete(name) : kept.set(name, value)),
  } as unknown as Store);
  session = {
    packId,
    record: {
      get value() {
        return foldRecord(packId, entries);
      },
    },
    async put(change: PendingChange) {
      changes.push(change);
      entries = provisionalEntries(packId, entries, change.puts);
      return true;
    },
  } as unknown as PackSession;
});

const open = () => openTest(session, tripKind, ID);
const lastPut = () => changes.at(-1)?.puts.at(-1);

async function complete(): Promise<void> {
  await open().change('currentA', 220);
  await open().change('heldForS', 4);
  await open().change('opened', true);
}

describe('one test on the screen', () => {
  it('is put 0 times while 1 of its 3 needed fields is missing, and kept on the phone meanwhile', async () => {
    await open().change('currentA', 220);
    await open().change('opened', true);
    expect(changes).toEqual([]);
    expect(open().missing).toEqual([tripKind.labels.heldForS]);
    expect(Object.values([...kept.values()][0] as object)[0]).toMatchObject({ currentA: 220, opened: true });
  });

  it('is put whole with the third field, with its day and without a stamp of its own, and waits no more', async () => {
    await complete();
    expect(changes).toHaveLength(1);
    const on = expect.stringMatching(/^\d{4}-\d\d-\d\d$/);
    expect(lastPut()).toEqual({
      subject: 'trip',
      part: ID,
      v: { on, currentA: 220, heldForS: 4, opened: true, made: null },
    });
    expect(kept.size).toBe(0);
    expect(open().unfinished).toBe(false);
  });

  it('keeps the stamp under which it was made, once that is drawn, and never writes a provisional one', async () => {
    await complete();
    await open().change('heldForS', 5);
    expect(lastPut()).toMatchObject({ v: { heldForS: 5, made: null } });
    written();
    const made = open().stored?.made;
    await open().change('heldForS', 6);
    expect(made).toMatch(/^0000017/);
    expect(lastPut()).toMatchObject({ v: { heldForS: 6, made } });
  });

  it('is not put when a field goes that it cannot be without: the 4 s stay', async () => {
    await complete();
    await open().change('heldForS', null);
    expect([changes.length, kept.size]).toEqual([1, 0]);
    expect(open().value).toMatchObject({ heldForS: 4 });
  });

  it('keeps fields it has no box for, as a newer version may have written them', async () => {
    await complete();
    const put = lastPut();
    const v = { ...(put && 'v' in put ? (put.v as object) : {}), later: 'kept' };
    await session.put({ puts: [{ subject: 'trip', part: ID, v }] });
    await open().change('note', 'loud');
    expect(lastPut()).toMatchObject({ v: { later: 'kept', note: 'loud' } });
  });

  it('is gone with 1 tombstone, and gone without one while it is unfinished', async () => {
    await open().change('currentA', 220);
    await open().remove();
    expect([changes.length, open().unfinished, kept.size]).toEqual([0, false, 0]);
    await complete();
    await open().remove();
    expect(changes.at(-1)?.puts).toEqual([{ subject: 'trip', part: ID, gone: true }]);
  });

  it('is not begun by its day alone, nor by an emptied box', async () => {
    const drain = openTest(session, drainKind, ID);
    await drain.change('currentMa', null);
    await drain.change('on', '2026-11-24');
    expect([changes.length, kept.size]).toEqual([0, 0]);
    await drain.change('currentMa', 0);
    expect(lastPut()).toMatchObject({ subject: 'drain', v: { currentMa: 0 } });
  });
});
