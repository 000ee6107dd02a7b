import type { BackupBench, Took } from './backup-of-1-gb.ts';
import type { BenchRow } from './plain-table.ts';

/** A backup of a gigabyte of photos and a restore of its first part: rate and peak memory, against the library alone. */
export function backupRows(bench: BackupBench): BenchRow[] {
  const { photoCount, packCount, partCount, contentBytes } = bench;
  const what = `backup of ${photoCount} photos, ${(contentBytes / 1e9).toFixed(2)} GB, ${packCount} packs, ${partCount} parts`;
  const first = `restore of part 1, ${mB(bench.restored.bytes)}`;
  const toFile = `fflate alone, same database to same kind of file, ${said(bench.libraryToFile, contentBytes)}`;
  const row = (name: string, took: Took, yardstick: string, than: Took): BenchRow => ({
    what: name,
    measured: said(took, name === first ? bench.restored.bytes : contentBytes),
    yardstick,
    ratio: took.ms / than.ms,
  });
  return [
    row(`${what}, streamed to a file`, bench.streamed, toFile, bench.libraryToFile),
    row(
      `${what}, streamed to a file`,
      bench.streamed,
      `fflate alone, from memory to nowhere, ${said(bench.libraryBare, contentBytes)}`,
      bench.libraryBare,
    ),
    row(`${what}, as Blobs`, bench.asBlobs, toFile, bench.libraryToFile),
    row(
      first,
      bench.restored,
      `fflate alone, unpacked to nowhere, ${said(bench.unpacked, bench.restored.bytes)}`,
      bench.unpacked,
    ),
  ];
}

/** Rate, and how far above the level before it the browser's memory rose, over all its processes. */
function said({ ms, memory }: Took, bytes: number): string {
  const rate = `${(bytes / 1e3 / ms).toFixed(0)} MB/s`;
  return memory === null ? rate : `${rate}, peak +${mB(memory.peakBytes - memory.beforeBytes)}`;
}

function mB(bytes: number): string {
  return `${(bytes / 1e6).toFixed(0)} MB`;
}
