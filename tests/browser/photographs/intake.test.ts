import { createHash } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../../.ci/find-browser.mjs';
import { pictureFacts } from '../../../src/photos/picture-facts.ts';
import { jpegLayout } from '../../../src/schema/jpeg-layout.ts';
import { empty, heicStub, pdfAsJpeg, truncated } from './broken-files.ts';
import { type CameraShot, cameraJpeg, holdsPosition } from './camera-jpeg.ts';
import { genuinePhoto } from './genuine-photo.ts';
import type { PortableIntake, Rgb } from './photo-page.ts';
import { SCENE_PLACES } from './scene.ts';
import { servePhotoPage } from './serve-photo-page.ts';

const FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'];
const TAKEN_AT = '2024-05-03T10:11:12+02:00';
const ORIENTATIONS = [1, 2, 3, 4, 5, 6, 7, 8] as const;
const PLAIN = { detail: false, keepOriginal: false };

let served: Awaited<ReturnType<typeof servePhotoPage>>;
let browser: Browser;
let folder: string;
let page: Page;
let mainPage: Page;
const refused: string[] = [];

beforeAll(async () => {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('no browser of the Chromium family found');
  folder = await mkdtemp(join(tmpdir(), 'underlid-photos-'));
  served = await servePhotoPage();
  browser = await chromium.launch({ executablePath, args: FLAGS });
  mainPage = await openPage({});
  page = mainPage;
}, 60_000);

async function openPage(options: { userAgent?: string }): Promise<Page> {
  const opened = await browser.newPage(options);
  opened.on('console', (message) => {
    if (message.text().includes('Content Security Policy')) refused.push(message.text());
  });
  await opened.goto(served.url);
  return opened;
}

/** Does the work in a page of its own, then goes back to the first. */
async function inOtherPage(options: { userAgent?: string }, work: () => Promise<void>): Promise<void> {
  const other = await openPage(options);
  page = other;
  try {
    await work();
  } finally {
    page = mainPage;
    await other.close();
  }
}

afterAll(async () => {
  await browser.close();
  await served.close();
  await rm(folder, { recursive: true });
  expect(refused, 'nothing was refused by the policy').toEqual([]);
});

/** By way of a file, which the browser reads by itself: sending the bytes over takes longer than the intake. */
async function pick(bytes: Uint8Array): Promise<void> {
  const path = join(folder, 'IMG_0001.jpg');
  await writeFile(path, bytes);
  await page.setInputFiles('#pick', []);
  await page.setInputFiles('#pick', path);
}

function takeIn(options: { detail: boolean; keepOriginal: boolean; path: 'worker' | 'page' }): Promise<PortableIntake> {
  return page.evaluate((given) => photoPage.takeIn(given), options);
}

async function taken(bytes: Uint8Array, options: Parameters<typeof takeIn>[0]) {
  await pick(bytes);
  const result = await takeIn(options);
  if (!result.ok) throw new Error(`not taken in: ${result.problem}`);
  return result;
}

/** The scene stands upright: every place has its colour, within what JPEG and scaling may change. */
async function expectUpright(jpeg: string, size: { widthPx: number; heightPx: number }): Promise<void> {
  const seen = await page.evaluate(([text, places]) => photoPage.look(text, places), [
    jpeg,
    SCENE_PLACES.map(({ u, v }) => ({ u, v })),
  ] as const);
  expect({ widthPx: seen.widthPx, heightPx: seen.heightPx }).toEqual(size);
  SCENE_PLACES.forEach(({ u, v, rgb, colour }, i) => {
    expect(farthest(seen.colours[i]!, rgb), `${colour} at ${u}, ${v}`).toBeLessThan(25);
  });
}

function farthest(seen: Rgb, wanted: readonly [number, number, number]): number {
  return Math.max(...wanted.map((level, channel) => Math.abs(level - seen[channel]!)));
}

/** No segment but tables, frame, scan and the bare JFIF header of 16 bytes. */
function expectBare(jpeg: string): void {
  const bytes = Buffer.from(jpeg, 'base64');
  const layout = jpegLayout(bytes);
  expect(layout.complete).toBe(true);
  expect(layout.end).toBe(bytes.length);
  for (const { marker, start, end } of layout.segments) {
    if (marker === 0xe0) expect(end - start).toBe(18);
    else expect(marker === 0xfe || (marker >= 0xe1 && marker <= 0xef), `marker ${marker.toString(16)}`).toBe(false);
  }
  expect(holdsPosition(bytes)).toBe(false);
}

const sha256 = (bytes: Uint8Array | string) =>
  createHash('sha256')
    .update(typeof bytes === 'string' ? Buffer.from(bytes, 'base64') : bytes)
    .digest('hex');

describe.each(['worker', 'page'] as const)('a 12 megapixel photograph by way of the %s', (path) => {
  it.each(ORIENTATIONS)(
    'with orientation %i comes out upright, 2048 px long, thumbnail 320 px, without position',
    async (orientation) => {
      const camera = shot({ orientation });
      expect(holdsPosition(camera)).toBe(true);
      const result = await taken(camera, { ...PLAIN, path });
      const size = orientation < 5 ? { widthPx: 2048, heightPx: 1536 } : { widthPx: 1536, heightPx: 2048 };
      const thumbSize = orientation < 5 ? { widthPx: 320, heightPx: 240 } : { widthPx: 240, heightPx: 320 };
      await expectUpright(result.picture, size);
      await expectUpright(result.thumb, thumbSize);
      expectBare(result.picture);
      expectBare(result.thumb);
      expect(result.photo).toEqual({
        ...size,
        type: 'image/jpeg',
        path: path === 'page' ? 'mainThread' : 'worker',
        takenAt: TAKEN_AT,
        sha256: sha256(result.picture),
        originalSha256: sha256(camera),
      });
      expect(result.steps).toEqual(['reading', 'shrinking', 'finishing']);
    },
  );
});

it.each([1, 6] as const)(
  'a kept original with orientation %i stands upright in the browser at its full 12 megapixels, without position and time',
  async (orientation) => {
    const result = await taken(shot({ orientation }), { detail: false, keepOriginal: true, path: 'worker' });
    const kept = Buffer.from(result.original!, 'base64');
    expect(holdsPosition(kept)).toBe(false);
    expect(pictureFacts(kept, 'jpeg')).toMatchObject({ complete: true, orientation, takenAt: null });
    const size = orientation < 5 ? { widthPx: 4032, heightPx: 3024 } : { widthPx: 3024, heightPx: 4032 };
    await expectUpright(result.original!, size);
  },
);

it.each(['worker', 'page'] as const)(
  'a 48 megapixel photograph with orientation 6 comes in by way of the %s as 1536 × 2048 px',
  async (path) => {
    const result = await taken(shot({ megapixels: 48, orientation: 6 }), { ...PLAIN, path });
    await expectUpright(result.picture, { widthPx: 1536, heightPx: 2048 });
    expectBare(result.picture);
  },
);

it('a detail photo of 48 megapixels keeps 4096 × 3072 px', async () => {
  const result = await taken(shot({ megapixels: 48 }), { detail: true, keepOriginal: false, path: 'worker' });
  await expectUpright(result.picture, { widthPx: 4096, heightPx: 3072 });
  expect(result.original).toBeNull();
});

it.each(['worker', 'page'] as const)(
  'a genuine photograph of 807 × 1024 px keeps its size and its colours by way of the %s',
  async (path) => {
    const genuine = genuinePhoto();
    const result = await taken(genuine, { detail: false, keepOriginal: true, path });
    expectBare(result.picture);
    expect(result.photo).toMatchObject({
      widthPx: 807,
      heightPx: 1024,
      takenAt: null,
      originalSha256: sha256(genuine),
    });
    const places = Array.from({ length: 25 }, (_, i) => ({ u: 0.1 + 0.2 * (i % 5), v: 0.1 + 0.2 * Math.floor(i / 5) }));
    const look = (jpeg: string) => page.evaluate(([text, at]) => photoPage.look(text, at), [jpeg, places] as const);
    const before = await look(Buffer.from(genuine).toString('base64'));
    for (const text of [result.picture, result.original!]) {
      const after = await look(text);
      before.colours.forEach((colour, i) => {
        expect(farthest(after.colours[i]!, colour)).toBeLessThan(text === result.original ? 0.01 : 12);
      });
    }
  },
);

it.each(['image/png', 'image/webp'] as const)(
  'a half transparent %s comes in on white: 228 128 128 and 255 255 255',
  async (type) => {
    for (const path of ['worker', 'page'] as const) {
      await page.evaluate((given) => photoPage.pickTransparent(given), type);
      const result = await takeIn({ detail: false, keepOriginal: true, path });
      if (!result.ok) throw new Error(result.problem);
      expect(result.original).toBeNull();
      const seen = await page.evaluate(
        (text) =>
          photoPage.look(text, [
            { u: 0.2, v: 0.5 },
            { u: 0.8, v: 0.5 },
          ]),
        result.picture,
      );
      // Half of 200, 0, 0 over white, by the closed form of "source over".
      expect(farthest(seen.colours[0]!, [227.5, 127.5, 127.5])).toBeLessThan(6);
      expect(farthest(seen.colours[1]!, [255, 255, 255])).toBeLessThan(3);
    }
  },
);

it.each([
  ['a truncated photograph', 'damaged', truncated],
  ['an HEIC file this browser cannot decode', 'cannotDecode', heicStub],
  ['a PDF named .jpg', 'notAPicture', pdfAsJpeg],
  ['an empty file', 'empty', empty],
  ['a header of 12 000 × 12 000 px', 'tooLarge', enormous],
] as const)('%s is refused on both paths: %s', async (_, problem, make) => {
  for (const path of ['worker', 'page'] as const) {
    await pick(make());
    expect(await takeIn({ ...PLAIN, path })).toMatchObject({ ok: false, problem });
  }
  // And nothing is stuck after it.
  await taken(shot({}), { ...PLAIN, path: 'worker' });
});

it('a cancelled intake answers within 100 ms, and the next one goes through a fresh worker', async () => {
  await pick(shot({ megapixels: 48 }));
  const { first, answeredMs, second } = await page.evaluate(() => photoPage.cancelThenTakeIn(50));
  expect(first).toMatchObject({ ok: false, problem: 'cancelled' });
  expect(answeredMs).toBeLessThan(100);
  expect(second).toMatchObject({ ok: true, photo: { path: 'worker' } });
});

it('a browser that hands back white for what was drawn is refused on the page, before it stores noise', async () => {
  await inOtherPage({}, async () => {
    await page.evaluate(() => {
      const white = (_x: number, _y: number, width: number, height: number) =>
        new ImageData(new Uint8ClampedArray(4 * width * height).fill(255), width, height);
      OffscreenCanvasRenderingContext2D.prototype.getImageData = white;
    });
    await pick(shot({}));
    expect(await takeIn({ ...PLAIN, path: 'page' })).toMatchObject({ ok: false, problem: 'canvasBlocked' });
  });
});

it('an older phone without off-screen canvas takes 48 megapixels in on the page, and covers up there too', async () => {
  const userAgent =
    'Mozilla/5.0 (iPhone; CPU iPhone OS 15_6 like Mac OS X) AppleWebKit/605.1.15 Version/15.6 Mobile/15E148 Safari/604.1';
  await inOtherPage({ userAgent }, async () => {
    await page.evaluate(() => Reflect.deleteProperty(globalThis, 'OffscreenCanvas'));
    const { picture, photo } = await taken(shot({ megapixels: 48, orientation: 6 }), { ...PLAIN, path: 'worker' });
    expect(photo).toMatchObject({ path: 'mainThread', widthPx: 1536, heightPx: 2048 });
    const covered = await page.evaluate(
      (text) => photoPage.coverUp(text, [{ x: 0, y: 0, width: 0.25, height: 0.25 }]),
      picture,
    );
    expectBare(covered);
    // Looked at in the page that still has the canvas to look with.
    page = mainPage;
    await expectUpright(picture, { widthPx: 1536, heightPx: 2048 });
    const seen = await page.evaluate((text) => photoPage.look(text, [{ u: 0.1, v: 0.1 }]), covered);
    expect(farthest(seen.colours[0]!, [0, 0, 0])).toBeLessThan(4);
  });
});

it('a covered box is black in the exported copy, the rest is as it was', async () => {
  const { picture } = await taken(shot({}), { ...PLAIN, path: 'worker' });
  const covered = await page.evaluate(
    (text) => photoPage.coverUp(text, [{ x: 0, y: 0, width: 0.25, height: 0.25 }]),
    picture,
  );
  const places = [
    { u: 0, v: 0 },
    { u: 0.24, v: 0.24 },
    { u: 0.9, v: 0.1 },
  ];
  const seen = await page.evaluate(([text, at]) => photoPage.look(text, at), [covered, places] as const);
  expect(farthest(seen.colours[0]!, [0, 0, 0])).toBeLessThan(4);
  expect(farthest(seen.colours[1]!, [0, 0, 0])).toBeLessThan(4);
  expect(farthest(seen.colours[2]!, [40, 160, 60])).toBeLessThan(25);
  expectBare(covered);
  expect(await page.evaluate((text) => photoPage.coverUp(text, []), picture)).toBe(picture);
});

function shot(change: Partial<CameraShot>): Uint8Array<ArrayBuffer> {
  return cameraJpeg({ megapixels: 12, orientation: 1, gps: true, takenAt: TAKEN_AT, ...change });
}

/** A sound file whose header claims 144 megapixels. */
function enormous(): Uint8Array<ArrayBuffer> {
  const bytes = shot({}).slice();
  const frame = jpegLayout(bytes).segments.find(({ marker }) => marker === 0xc0)!;
  new DataView(bytes.buffer).setUint16(frame.start + 5, 12_000);
  new DataView(bytes.buffer).setUint16(frame.start + 7, 12_000);
  return bytes;
}
