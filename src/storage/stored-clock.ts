import { promisifyRequest } from 'idb-keyval';
import { nextStamp } from '../record/next-stamp.ts';
import type { Stamp } from '../schema/stamp.ts';
import { FIRST_IMPOSSIBLE_MS } from './bundle/bundle-limits.ts';

/** Who writes, in which tab, and when by the wall clock. */
export interface Writer {
  deviceId: string;
  tabId: string;
  nowMs: number;
}

/** The clock as it stands inside one writing transaction (its stores must include `device`). */
export interface StoredClock {
  draw(): Stamp;
  /** Takes note of a stamp met from elsewhere: later ones will pass it. */
  see(stamp: Stamp): void;
  save(): void;
}

const CLOCK = 'clock';

/**
 * The latest that a wall clock is believed: a bundle with later stamps is refused, so what a phone gone wrong (to 2106,
 * where 32 bits of seconds end) wrote could never be restored. Our choice: a year before, because stamps rise from there.
 */
const LATEST_WALL_MS = FIRST_IMPOSSIBLE_MS - 365 * 86_400_000;

/** Two tabs can never draw the same stamp: the row is read and written in one transaction. */
export async function clockIn(tx: IDBTransaction, { deviceId, ...wall }: Omit<Writer, 'tabId'>): Promise<StoredClock> {
  const nowMs = Math.min(wall.nowMs, LATEST_WALL_MS);
  const rows = tx.objectStore('device');
  let seen = await newestStampIn(tx);
  return {
    draw: () => {
      seen = nextStamp({ seen, nowMs, deviceId });
      return seen;
    },
    see: (stamp) => {
      if (seen === null || stamp > seen) seen = stamp;
    },
    save: () => {
      if (seen !== null) rows.put(seen, CLOCK);
    },
  };
}

/** The newest stamp this device has drawn or met; null before the first. */
export async function newestStampIn(tx: IDBTransaction): Promise<Stamp | null> {
  return (await promisifyRequest<Stamp | undefined>(tx.objectStore('device').get(CLOCK))) ?? null;
}
