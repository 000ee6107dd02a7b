import { describe, expect, it } from 'vitest';
import { type LogWorker, openLog } from '../../../src/app/logs/log-job.ts';
import type { FromLogWorker, ToLogWorker } from '../../../src/logs/log-messages.ts';
import { serveLog } from '../../../src/logs/serve-log.ts';
import { asCsv, syntheticDischarge } from '../../logs/synthetic-lfp.ts';

/** The real worker's side, reached the way a worker is: by copies, and later. */
function workerInPage(): LogWorker & { ended: boolean; sent: ToLogWorker[] } {
  const sent: ToLogWorker[] = [];
  const take = serveLog({
    post: (message) => {
      const data = structuredClone(message);
      setTimeout(() => worker.onmessage?.({ data } as MessageEvent<FromLogWorker>));
    },
    breathe: () => new Promise((resolve) => setTimeout(resolve)),
  });
  const worker: LogWorker & { ended: boolean; sent: ToLogWorker[] } = {
    onmessage: null,
    onerror: null,
    ended: false,
    sent,
    postMessage: (message) => {
      sent.push(message);
      const copy = structuredClone(message);
      setTimeout(() => take(copy));
    },
    terminate: () => {
      worker.ended = true;
    },
  };
  return worker;
}

const bytes = new TextEncoder().encode(asCsv(syntheticDischarge({ cells: 4 }))).buffer as ArrayBuffer;
const long = new TextEncoder().encode(
  `Time [s],I [A],U [V]\n${Array.from({ length: 60_000 }, (_, row) => `${row},5,13`).join('\n')}\n`,
).buffer as ArrayBuffer;

describe('openLog', () => {
  it('opens, reads with progress and draws; the bytes stay with the caller', async () => {
    const job = openLog(bytes, workerInPage);
    const { mapping } = await job.opened;
    const shares: number[] = [];
    const summary = await job.read(mapping, { onProgress: (share) => shares.push(share), help: { cellsInSeries: 4 } });
    expect(summary.runs.map(({ end }) => end)).toEqual(['lowVoltage']);
    expect(shares.length).toBeGreaterThan(0);
    expect((await job.curve(0, 20)).timeS.length).toBeLessThanOrEqual(20);
    expect(bytes.byteLength).toBeGreaterThan(0);
    job.close();
  });

  it('rejects a cancelled reading with AbortError, and reads again', async () => {
    const job = openLog(long, workerInPage);
    const { mapping } = await job.opened;
    const reading = job.read(mapping, { onProgress: () => job.cancel() });
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' });
    expect((await job.read(mapping)).rowCount).toBe(60_000);
    job.close();
  });

  it('guesses and shows again', async () => {
    const job = openLog(bytes, workerInPage);
    const { mapping } = await job.opened;
    expect((await job.guess({ headerLine: null })).mapping.layout.headerLine).toBeNull();
    expect((await job.preview(mapping)).rows).toHaveLength(20);
    job.close();
  });

  it('ends the worker on close and rejects what waits', async () => {
    const worker = workerInPage();
    const job = openLog(bytes, () => worker);
    const { mapping } = await job.opened;
    const reading = job.read(mapping);
    job.close();
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' });
    expect(worker.ended).toBe(true);
    await expect(job.curve(0, 20)).rejects.toMatchObject({ name: 'AbortError' });
  });

  it('rejects what waits when the worker breaks down, and a run that is not there, with the words of the fault', async () => {
    const worker = workerInPage();
    const job = openLog(bytes, () => worker);
    await job.opened;
    await expect(job.curve(7, 20)).rejects.toThrow('serveLog: run must be one of 0 read, got 7');
    const waiting = job.guess({});
    worker.onerror?.({ message: 'out of memory' } as ErrorEvent);
    await expect(waiting).rejects.toThrow('out of memory');
  });
});
