import type { Page } from 'playwright-core';
import { cameraJpeg } from '../browser/photographs/camera-jpeg.ts';
import type {} from '../browser/photographs/photo-page.ts';
import { median } from './percentiles.ts';

export interface PhotoIntakeTimes {
  megapixels: 12 | 48;
  fileBytes: number;
  /** Medians: the whole intake in the worker, with checks, two hashes, stripping and thumbnail … */
  intakeMs: number;
  /** … and the browser's own decode, resize to 2048 px and encode at the same quality. */
  browserAloneMs: number;
  /** The longest time the page did not answer in any intake run. */
  longestStallMs: number;
}

/**
 * Times the photo intake against the browser alone, in turns on the same file, so that a busy machine slows both.
 * The page must stand on the address that servePhotoPage() gives.
 */
export async function measurePhotoIntake(page: Page, megapixels: 12 | 48, runs = 7): Promise<PhotoIntakeTimes> {
  const file = cameraJpeg({ megapixels, orientation: 1, gps: true, takenAt: '2024-05-03T10:11:12+02:00' });
  await page.setInputFiles('#pick', { name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(file) });
  // The first run starts the worker and warms the decoder.
  await page.evaluate(async () => [await photoPage.timeIntake(), await photoPage.timeBrowserAlone()]);
  const intake: { tookMs: number; longestStallMs: number }[] = [];
  const alone: { tookMs: number }[] = [];
  for (let run = 0; run < runs; run++) {
    intake.push(await page.evaluate(() => photoPage.timeIntake()));
    alone.push(await page.evaluate(() => photoPage.timeBrowserAlone()));
  }
  return {
    megapixels,
    fileBytes: file.length,
    intakeMs: median(intake.map(({ tookMs }) => tookMs)),
    browserAloneMs: median(alone.map(({ tookMs }) => tookMs)),
    longestStallMs: Math.max(...intake.map(({ longestStallMs }) => longestStallMs)),
  };
}
