import { expect, it } from 'vitest';
import type { Took } from './backup-of-1-gb.ts';
import { backupRows } from './backup-rows.ts';

function took(ms: number, roseMB: number): Took {
  return { ms, bytes: 0, memory: { beforeBytes: 300e6, peakBytes: (300 + roseMB) * 1e6, samples: 9 } };
}

it('says 1 GB in 10 s as 100 MB/s, how far memory rose, and 1.25 times the 8 s of the library alone', () => {
  const [toFile, bare, blobs, restore] = backupRows({
    photoCount: 1700,
    packCount: 17,
    partCount: 4,
    contentBytes: 1e9,
    streamed: took(10_000, 150),
    asBlobs: { ...took(12_000, 600), memory: null },
    libraryToFile: took(8_000, 140),
    libraryBare: took(4_000, 20),
    restored: { ...took(5_000, 70), bytes: 250e6 },
    unpacked: took(2_000, 30),
  });
  expect(toFile).toEqual({
    what: 'backup of 1700 photos, 1.00 GB, 17 packs, 4 parts, streamed to a file',
    measured: '100 MB/s, peak +150 MB',
    yardstick: 'fflate alone, same database to same kind of file, 125 MB/s, peak +140 MB',
    ratio: 1.25,
  });
  expect([bare?.ratio, blobs?.measured, blobs?.ratio]).toEqual([2.5, '83 MB/s', 1.5]);
  expect(restore).toMatchObject({ what: 'restore of part 1, 250 MB', measured: '50 MB/s, peak +70 MB', ratio: 2.5 });
});
