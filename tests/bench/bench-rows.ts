import type { KillsFound } from '../browser/driver/kill-rounds.ts';
import type { BackupBench } from './backup-of-1-gb.ts';
import { backupRows } from './backup-rows.ts';
import { firmnessRow } from './firmness-draws.ts';
import type { gradingsPerSecond } from './gradings-per-second.ts';
import { type HostileFound, hostileRows } from './hostile-files.ts';
import { killRows } from './kills.ts';
import type { Size } from './load-sizes.ts';
import { LOG_ROWS, type LogImportBench } from './log-import.ts';
import type { PdfBench } from './pdf-60-photos.ts';
import { median, percentile } from './percentiles.ts';
import type { PhotoIntakeTimes } from './photo-intake.ts';
import type { PickTimes } from './pick-to-saved.ts';
import type { BenchRow } from './plain-table.ts';
import type { TapTimes } from './tap-to-saved.ts';

/** Runs of which the median is taken; a run of taps is two on every item of the checklist. */
export const RUNS = { gradings: 5, firmness: 5, log: 5, pdf: 5, photos: 7, taps: 3 };

/** How many times slower than this machine the phone is taken to be: our choice, a usual step of browser tools. */
export const SLOWDOWN = 4;

/** The project's own aim for what is loaded before anything lazy, gzipped. */
const AIM_BYTES = { js: 45_000, css: 12_000 };

export interface Found {
  js: Size;
  css: Size;
  precache: Size;
  gradings: Awaited<ReturnType<typeof gradingsPerSecond>>[];
  firmnessMs: number[];
  log: LogImportBench;
  pdf: PdfBench;
  intake: PhotoIntakeTimes;
  pick: PickTimes;
  taps: { slowed: TapTimes[]; unslowed: TapTimes[] };
  kills: KillsFound;
  hostile: HostileFound;
  backup: BackupBench;
}

/** Everything found, as lines of the report. */
export function benchRows({
  js,
  css,
  precache,
  gradings,
  firmnessMs,
  log,
  pdf,
  intake,
  pick,
  taps,
  kills,
  hostile,
  backup,
}: Found): BenchRow[] {
  return [
    firstLoadRow('JavaScript', js, AIM_BYTES.js),
    firstLoadRow('CSS', css, AIM_BYTES.css),
    {
      what: `precache, ${precache.files} files`,
      measured: `${kB(precache.rawBytes)} raw, ${kB(precache.gzBytes)} gz`,
      yardstick: null,
      ratio: null,
    },
    tapRow(`${SLOWDOWN}× CPU throttle, first answers`, taps.slowed, 'firstMs'),
    tapRow(`${SLOWDOWN}× CPU throttle, changed answers`, taps.slowed, 'changedMs'),
    tapRow('full speed, first answers', taps.unslowed, 'firstMs'),
    tapRow('full speed, changed answers', taps.unslowed, 'changedMs'),
    timesRow({
      what: `12 MP photo, picked to saved, median of ${pick.savedMs.length}`,
      oursMs: median(pick.savedMs),
      yardstick: 'decode, resize, encode by the browser alone',
      yardstickMs: median(pick.browserAloneMs),
    }),
    timesRow({
      what: `12 MP photo, intake alone, median of ${RUNS.photos}`,
      oursMs: intake.intakeMs,
      yardstick: 'the same',
      yardstickMs: intake.browserAloneMs,
    }),
    ...logRows(log),
    timesRow({
      what: `PDF of ${pdf.photoCount} photos, median of ${RUNS.pdf}`,
      oursMs: pdf.oursMs,
      yardstick: 'bare library, same bytes',
      yardstickMs: pdf.bareMs,
    }),
    ...killRows(kills),
    ...hostileRows(hostile),
    ...backupRows(backup),
    {
      what: `gradings per second, ${gradings[0]?.items ?? 0} items, median of ${gradings.length}`,
      measured: median(gradings.map(({ perSecond }) => perSecond)).toFixed(0),
      yardstick: null,
      ratio: null,
    },
    firmnessRow(firmnessMs),
  ];
}

function firstLoadRow(kind: string, { gzBytes }: Size, aimBytes: number): BenchRow {
  return {
    what: `first-load ${kind}`,
    measured: `${kB(gzBytes)} gz`,
    yardstick: `aim ≤ ${kB(aimBytes)} gz`,
    ratio: gzBytes / aimBytes,
  };
}

/** Median over the runs of each run's p95 and median, so that one disturbed run does not decide; the worst of all. */
function tapRow(what: string, runs: readonly TapTimes[], kind: 'firstMs' | 'changedMs'): BenchRow {
  const p95Ms = median(runs.map((run) => percentile(run[kind], 95)));
  const medianMs = median(runs.map((run) => median(run[kind])));
  const maxMs = Math.max(...runs.flatMap((run) => run[kind]));
  const bareP95Ms = median(runs.map(({ bareMs }) => percentile(bareMs, 95)));
  const held = (count: (run: TapTimes) => number) => [...new Set(runs.map(count))].join('/');
  const record = `${held((run) => run.itemCount)} items, ${held((run) => run.photoCount)} photos`;
  return {
    what: `tap to saved, ${what}, ${runs.length} × ${held((run) => run[kind].length)} taps, ${record}`,
    measured: `p95 ${ms(p95Ms)}, median ${ms(medianMs)}, max ${ms(maxMs)}`,
    yardstick: `one bare transaction, p95 ${ms(bareP95Ms)}`,
    ratio: p95Ms / bareP95Ms,
  };
}

/** Our own bars: one and a half times the parser that makes plain strings, six times the file in memory. */
function logRows({ ours, udsv, papa, fileBytes }: LogImportBench): BenchRow[] {
  const what = `log of ${LOG_ROWS / 1e6} M rows, ${(fileBytes / 1e6).toFixed(0)} MB, median of ${RUNS.log}`;
  const times = ({ peakBytes }: { peakBytes: number }) => `${(peakBytes / fileBytes).toFixed(1)} × the file`;
  return [
    timesRow({ what: `${what}, read`, oursMs: ours.ms, yardstick: 'uDSV to plain strings', yardstickMs: udsv.ms }),
    timesRow({ what: `${what}, read`, oursMs: ours.ms, yardstick: 'Papa Parse to strings', yardstickMs: papa.ms }),
    {
      what: `${what}, peak memory over start`,
      measured: times(ours),
      yardstick: `aim ≤ 6 × the file; uDSV ${times(udsv)}, Papa Parse ${times(papa)}`,
      ratio: ours.peakBytes / fileBytes / 6,
    },
  ];
}

function timesRow(row: { what: string; oursMs: number; yardstick: string; yardstickMs: number }): BenchRow {
  return {
    what: row.what,
    measured: ms(row.oursMs),
    yardstick: `${row.yardstick} ${ms(row.yardstickMs)}`,
    ratio: row.oursMs / row.yardstickMs,
  };
}

function ms(value: number): string {
  return `${value.toFixed(value < 10 ? 1 : 0)} ms`;
}

function kB(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}
