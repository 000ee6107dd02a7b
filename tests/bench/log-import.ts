import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { ImportTook } from './log-import-child.ts';
import { writeMadeLog } from './made-log.ts';
import { median } from './percentiles.ts';

export const LOG_ROWS = 1_000_000;
const READERS = ['ours', 'udsv', 'papa'] as const;
type Reader = (typeof READERS)[number];

export type LogImportBench = Record<(typeof READERS)[number], { ms: number; peakBytes: number }> & {
  fileBytes: number;
};

/** Reads one log of a million rows by each reader, turn about, each time in a process of its own; medians. */
export async function benchLogImport(runs: number): Promise<LogImportBench> {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-bench-log-'));
  try {
    const log = join(folder, 'log.csv');
    writeMadeLog(log, LOG_ROWS);
    await bundleChild(folder);
    const took = { ours: [], udsv: [], papa: [] } as Record<Reader, ImportTook[]>;
    for (let run = 0; run < runs; run++) {
      for (const reader of READERS) took[reader].push(readInChild(join(folder, 'child.mjs'), reader, log));
    }
    const of = (reader: Reader) => ({
      ms: median(took[reader].map(({ ms }) => ms)),
      peakBytes: median(took[reader].map(({ peakBytes }) => peakBytes)),
    });
    return { ours: of('ours'), udsv: of('udsv'), papa: of('papa'), fileBytes: took.ours[0]?.fileBytes ?? 0 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One file that Node runs by itself. */
async function bundleChild(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: fileURLToPath(new URL('log-import-child.ts', import.meta.url)),
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: 'child.mjs' } },
    },
  });
}

function readInChild(script: string, reader: string, log: string): ImportTook {
  const took = JSON.parse(execFileSync(process.execPath, [script, reader, log], { encoding: 'utf8' })) as ImportTook;
  if (took.rows !== LOG_ROWS) throw new Error(`readInChild: ${reader} must read ${LOG_ROWS} rows, got ${took.rows}`);
  return took;
}
