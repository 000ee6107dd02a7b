import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, type CDPSession, chromium, type Page } from 'playwright-core';
import { beginPack } from '../browser/driver/job.ts';
import { browserPath, FLAGS, PHONE } from '../browser/driver/launch.ts';
import { bringFflate, unzipByFflate, zipByFflate } from './fflate-alone.ts';
import { fillWithPhotos } from './fill-with-photos.ts';
import { browserPidOf, type MemoryTook, watchMemory } from './process-tree-memory.ts';
import { emptyPhone, filesOf, reload, restoreFile, saveAll } from './through-keep.ts';

/** Time and bytes of one piece of work, and memory of the whole browser during it; null where the system tells none. */
export interface Took {
  ms: number;
  bytes: number;
  memory: MemoryTook | null;
}

export interface BackupBench {
  photoCount: number;
  packCount: number;
  partCount: number;
  /** Photos and thumbnails. */
  contentBytes: number;
  /** Saved by the screen: streamed into a file … */
  streamed: Took;
  /** … and made as Blobs and handed over, where the browser has no save picker. */
  asBlobs: Took;
  /** The library alone, from the same database into the same kind of file: mean of a run before ours and one after … */
  libraryToFile: Took;
  /** … and from memory, each chunk dropped. */
  libraryBare: Took;
  /** The first part restored by the screen on an empty phone, and unpacked by the library alone. */
  restored: Took;
  unpacked: Took;
}

const WITHOUT_PICKER = 'bench-without-picker';
const PACKS = { packCount: 17, photosPerPack: 100, photoBytes: 600_000, thumbBytes: 6_000 };

/**
 * A gigabyte of photos in the app's own database, on disk as on a phone: saved and restored through Keep, against the zip
 * library alone on the same bytes in the same page.
 */
export async function benchBackup(): Promise<BackupBench> {
  const profile = await mkdtemp(join(tmpdir(), 'underlid-bench-backup-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browserPath(),
    args: FLAGS,
    ...PHONE,
  });
  context.setDefaultTimeout(120_000);
  try {
    // A save picker that asks nobody: the file lies among the page's own. WITHOUT_PICKER takes it away.
    await context.addInitScript((without) => {
      const pick = async ({ suggestedName }: { suggestedName: string }) =>
        (await navigator.storage.getDirectory()).getFileHandle(suggestedName, { create: true });
      const taken = sessionStorage.getItem(without) !== null;
      Reflect.set(globalThis, 'showSaveFilePicker', taken ? undefined : pick);
    }, WITHOUT_PICKER);
    const page = context.pages()[0] ?? (await context.newPage());
    await beginPack(page, { name: 'Grebe 24', nominalVoltageV: '25.6', cellsInSeries: '8' });
    const { photoCount, totalBytes: contentBytes } = await fillWithPhotos(page, PACKS);
    const meter = await meterOf(context, page);
    await bringFflate(page);
    const libraryBare = await meter(() => zipByFflate(page, 'nothing'));
    const libraryBefore = await meter(() => zipByFflate(page, 'file'));

    await reload(page, '#/keep');
    const streamed = await meter(() => saveAll(page));
    const files = await filesOf(page);
    const savedBytes = files.reduce((sum, { bytes }) => sum + bytes, 0);
    // Photos are stored as they are, so whatever is smaller has left some out.
    if (savedBytes < contentBytes) throw new Error(`benchBackup: ${savedBytes} of ${contentBytes} bytes were saved`);
    await page.evaluate((without) => sessionStorage.setItem(without, 'yes'), WITHOUT_PICKER);
    await reload(page, '#/keep');
    const asBlobs = await meter(() => saveAll(page));
    await bringFflate(page);
    const libraryAfter = await meter(() => zipByFflate(page, 'file'));

    const [first] = files;
    if (first === undefined) throw new Error('benchBackup: no part was saved');
    await emptyPhone(page);
    await bringFflate(page);
    const unpacked = await meter(() => unzipByFflate(page, first.name));
    await reload(page, '#/keep');
    const restored = await meter(() => restoreFile(page, first.name));
    return {
      photoCount,
      packCount: PACKS.packCount,
      partCount: files.length,
      contentBytes,
      streamed: { ...streamed, bytes: savedBytes },
      asBlobs,
      libraryToFile: meanOf(libraryBefore, libraryAfter),
      libraryBare,
      restored: { ...restored, bytes: first.bytes },
      unpacked: { ...unpacked, bytes: first.bytes },
    };
  } finally {
    await context.close();
    await rm(profile, { recursive: true, force: true });
  }
}

/** Runs a piece of work with the browser's memory watched, from a state in which its garbage has gone. */
async function meterOf(context: BrowserContext, page: Page) {
  const pid = await browserPidOf(context);
  const cdp: CDPSession = await context.newCDPSession(page);
  return async (work: () => Promise<{ ms: number; bytes: number }>): Promise<Took> => {
    await cdp.send('HeapProfiler.collectGarbage');
    await page.waitForTimeout(1500);
    const ended = watchMemory(pid);
    const { ms, bytes } = await work();
    return { ms, bytes, memory: ended === null ? null : await ended() };
  };
}

/** Of two runs, so that a machine that gets busier or quieter meanwhile weighs on both sides. */
function meanOf(one: Took, other: Took): Took {
  const memory = one.memory !== null && other.memory !== null && rise(one.memory) < rise(other.memory) ? other : one;
  return { ...memory, ms: (one.ms + other.ms) / 2 };
}

const rise = ({ beforeBytes, peakBytes }: MemoryTook) => peakBytes - beforeBytes;
