import { describe, expect, it } from 'vitest';
import type { LogMapping } from '../../src/logs/log-mapping.ts';
import type { FromLogWorker, ToLogWorker } from '../../src/logs/log-messages.ts';
import { serveLog } from '../../src/logs/serve-log.ts';
import { asCsv, followed, syntheticDischarge } from './synthetic-lfp.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text).buffer as ArrayBuffer;
const CSV = asCsv(followed(syntheticDischarge({ cells: 4 }), Array(5).fill({ currentA: 0, voltageV: 11.6 })));
const LONG = `Time [s],I [A],U [V]\n${Array.from({ length: 50_000 }, (_, row) => `${row},5,13`).join('\n')}\n`;

/** A worker's side with its answers; `next` waits for the end of a job. */
function served(onBreath: () => void = () => {}) {
  const heard: FromLogWorker[] = [];
  const waiting = new Map<number, (message: FromLogWorker) => void>();
  const take = serveLog({
    post: (message) => {
      heard.push(structuredClone(message));
      if (message.kind !== 'progress') waiting.get(message.jobId)?.(message);
    },
    breathe: async () => onBreath(),
  });
  const ask = (message: Exclude<ToLogWorker, { kind: 'cancel' }>) =>
    new Promise<FromLogWorker>((resolve) => {
      waiting.set(message.jobId, resolve);
      take(message);
    });
  return { heard, take, ask };
}

async function open(server: ReturnType<typeof served>, text: string): Promise<LogMapping> {
  const answer = await server.ask({ kind: 'open', jobId: 1, bytes: bytesOf(text) });
  if (answer.kind !== 'guessed') throw new Error(`open must be answered "guessed", got "${answer.kind}"`);
  return answer.guessed.mapping;
}

describe('serveLog', () => {
  it('opens with a mapping and the first 20 rows in cells, the header above them', async () => {
    const server = served();
    const answer = await server.ask({ kind: 'open', jobId: 1, bytes: bytesOf(CSV) });
    expect(answer).toMatchObject({
      kind: 'guessed',
      guessed: { mapping: { timeFormat: 'seconds' }, preview: { above: [{ line: 1 }] } },
    });
    expect(answer.kind === 'guessed' && answer.guessed.preview.rows).toHaveLength(20);
    expect(answer.kind === 'guessed' && answer.guessed.preview.rows[0]).toEqual({
      line: 2,
      cells: ['0', '0.0000', '13.6000'],
    });
  });

  it('reads to a summary of one run, the columns kept back, and draws it', async () => {
    const server = served();
    const mapping = await open(server, CSV);
    const answer = await server.ask({ kind: 'read', jobId: 2, mapping, help: { cellsInSeries: 4 } });
    expect(answer).toMatchObject({
      kind: 'read',
      summary: { rowCount: 366, runs: [{ end: 'lowVoltage', evidence: { voltagePerCellV: 2 } }] },
    });
    expect(answer.kind === 'read' && 'columns' in answer.summary).toBe(false);
    expect(answer.kind === 'read' && answer.summary.overview[0]?.timeS).toHaveLength(366);
    const drawn = await server.ask({ kind: 'curve', jobId: 3, runIndex: 0, maxPoints: 50 });
    expect(drawn.kind === 'curve' && drawn.curve.timeS.length).toBeLessThanOrEqual(50);
  });

  it('tells progress while it reads', async () => {
    const server = served();
    const mapping = await open(server, LONG);
    await server.ask({ kind: 'read', jobId: 2, mapping, help: {} });
    expect(server.heard.filter(({ kind }) => kind === 'progress').length).toBeGreaterThanOrEqual(4);
  });

  it('stops a reading when told to, and can read again', async () => {
    let breaths = 0;
    const server = served(() => {
      breaths++;
      if (breaths === 2) server.take({ kind: 'cancel', jobId: 2 });
    });
    const mapping = await open(server, LONG);
    expect(await server.ask({ kind: 'read', jobId: 2, mapping, help: {} })).toEqual({ kind: 'cancelled', jobId: 2 });
    expect(breaths).toBe(2);
    expect((await server.ask({ kind: 'read', jobId: 4, mapping, help: {} })).kind).toBe('read');
  });

  it('ends one reading where another begins', async () => {
    const server = served();
    const mapping = await open(server, LONG);
    const [first, second] = await Promise.all([
      server.ask({ kind: 'read', jobId: 2, mapping, help: {} }),
      server.ask({ kind: 'read', jobId: 3, mapping, help: {} }),
    ]);
    expect([first.kind, second.kind]).toEqual(['cancelled', 'read']);
  });

  it('guesses again around a choice, and shows another layout', async () => {
    const server = served();
    const mapping = await open(server, CSV);
    const again = await server.ask({ kind: 'guess', jobId: 2, choice: { separator: ';' } });
    expect(again).toMatchObject({ kind: 'guessed', guessed: { mapping: { layout: { separator: ';' } } } });
    const shown = await server.ask({
      kind: 'preview',
      jobId: 3,
      mapping: { ...mapping, layout: { ...mapping.layout, firstDataLine: 3 } },
    });
    expect(shown.kind === 'preview' && shown.preview.rows[0]?.line).toBe(3);
  });

  it('says what is wrong with a run that is not there', async () => {
    const server = served();
    await open(server, CSV);
    expect(await server.ask({ kind: 'curve', jobId: 2, runIndex: 0, maxPoints: 50 })).toEqual({
      kind: 'failed',
      jobId: 2,
      message: 'serveLog: run must be one of 0 read, got 0',
    });
  });

  it('answers a log it cannot read with the closed word: noNumbers', async () => {
    const server = served();
    const mapping = await open(server, 'no log at all');
    expect(await server.ask({ kind: 'read', jobId: 2, mapping, help: {} })).toMatchObject({
      kind: 'read',
      summary: { refused: 'noNumbers', runs: [], overview: [] },
    });
  });
});
