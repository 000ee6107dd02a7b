import { signal } from '@preact/signals';
import type { LogMapping } from '../../logs/log-mapping.ts';
import type { RunEndHelp } from '../../logs/make-run.ts';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import type { Log } from '../../schema/live-tests/run.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import { store } from '../state/store.ts';
import { type FileRefusal, fileRefusal, HEAD_BYTES } from './file-refusal.ts';
import { hashOfFile } from './hash-of-file.ts';
import { type LogFile, LogInHand } from './log-in-hand.ts';

interface AtHand {
  packId: string;
  log: LogInHand;
}

/** One at a time: a log and its reading can be larger than all the rest of the app. */
export const atHand = signal<AtHand | null>(null);

/** Name of the file whose first reading was cancelled just now; nothing of it is left. */
export const cancelled = signal<string | null>(null);

export type Picked = { ok: true; file: LogFile } | { ok: false; because: FileRefusal | 'unreadable' };

/** A file as it was picked: looked at, and named by its hash. */
export async function pickedLog(file: File): Promise<Picked> {
  try {
    const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
    const refused = fileRefusal({ byteCount: file.size, head });
    if (refused !== null) return { ok: false, because: refused };
    const logId = await hashOfFile(file);
    const { name, size: byteCount } = file;
    return { ok: true, file: { logId, name, byteCount, bytes: () => file.arrayBuffer(), picked: file } };
  } catch (error) {
    console.warn('log: the file cannot be opened', error);
    return { ok: false, because: 'unreadable' };
  }
}

/** Takes a log in hand, in place of the one before. `mapping` is how it was read when it was kept. */
export function takeInHand(
  packId: string,
  file: LogFile,
  given: { help: RunEndHelp; mapping: LogMapping | null },
): void {
  putDown();
  cancelled.value = null;
  atHand.value = { packId, log: new LogInHand(file, given.help, given.mapping) };
}

export function putDown(): void {
  atHand.value?.log.close();
  atHand.value = null;
}

/** A kept log's file from this phone; null if its bytes are not here. */
export async function keptLog({ id, name, byteCount }: Named<Log>): Promise<LogFile | null> {
  const bytes = async () => (await store().log(id))?.bytes ?? null;
  if ((await bytes()) === null) return null;
  return {
    logId: id,
    name,
    byteCount,
    bytes: async () => {
      const found = await bytes();
      if (found === null) throw new Error('log: its bytes are not on this phone any more');
      return found;
    },
    picked: null,
  };
}

/** What of the nameplate helps to tell how a run ended. */
export function endHelp({ cellsInSeries, cutOffVoltageV }: Nameplate): RunEndHelp {
  return {
    ...(cellsInSeries !== undefined && { cellsInSeries }),
    ...(cutOffVoltageV !== undefined && { cutOffVoltageV }),
  };
}
