import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { inferSchema, initParser } from 'udsv';
import { guessMapping } from '../../src/logs/guess-mapping.ts';
import { readLog } from '../../src/logs/read-log.ts';

/** What one reader took: time of the reading alone, and memory over what the process held before the file was read. */
export interface ImportTook {
  ms: number;
  peakBytes: number;
  fileBytes: number;
  rows: number;
}

/**
 * Most memory this process has held. On Linux from its own high-water mark: maxRSS begins at what the process that
 * started it held, which is more than a reader needs.
 */
function peakRssBytes(): number {
  if (process.platform !== 'linux') return process.resourceUsage().maxRSS * 1024;
  const kib = /^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))?.[1];
  if (kib === undefined) throw new Error('peakRssBytes: /proc/self/status must name VmHWM');
  return Number(kib) * 1024;
}

/** Each reader gets the log as it wants it, bytes or a string, before the clock starts. */
const READERS: Record<string, (path: string) => () => number> = {
  ours: (path) => {
    const bytes = new Uint8Array(readFileSync(path));
    return () => {
      const steps = readLog(bytes, guessMapping(bytes));
      let step = steps.next();
      while (!step.done) step = steps.next();
      return step.value.columns.timeS.length;
    };
  },
  udsv: (path) => {
    const text = readFileSync(path, 'utf8');
    return () => initParser(inferSchema(text)).stringArrs(text).length;
  },
  papa: (path) => {
    const text = readFileSync(path, 'utf8');
    return () => Papa.parse(text, { header: false, skipEmptyLines: true }).data.length - 1;
  },
};

const [, , reader = '', path = ''] = process.argv;
const startBytes = process.memoryUsage.rss();
const read = READERS[reader]?.(path);
if (read === undefined) throw new Error(`log-import-child: no reader named "${reader}"`);
const startMs = performance.now();
const rows = read();
const ms = performance.now() - startMs;
const peakBytes = peakRssBytes() - startBytes;
const took: ImportTook = { ms, peakBytes, fileBytes: readFileSync(path).length, rows };
console.log(JSON.stringify(took));
