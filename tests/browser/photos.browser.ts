import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Photo } from '../../src/schema/photo.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { photoProblemSentence } from '../../src/text/photos.ts';
import { cameraRoll, TAKEN_AT } from './driver/camera-roll.ts';
import { everythingStored, storedEntries } from './driver/database.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { coloursOfImage, expectUpright } from './driver/look.ts';
import { pdfPictures } from './driver/pdf-pictures.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { openPhotoId, photograph } from './driver/photo.ts';
import { type SavedFile, saveBundle, savePdf } from './driver/save.ts';
import { goTo, tapButton } from './driver/screen.ts';
import { empty, heicStub, pdfAsJpeg, truncated } from './photographs/broken-files.ts';
import { holdsPosition } from './photographs/camera-jpeg.ts';

const ORIENTATIONS = [1, 2, 3, 4, 5, 6, 7, 8] as const;

const roll = cameraRoll();
/** Nine photographs: every orientation at 12 megapixels, and one of 48. */
const shots = new Map([
  ...ORIENTATIONS.map(
    (orientation) => [`orientation ${orientation}`, roll.shot(`IMG_000${orientation}.jpg`, { orientation })] as const,
  ),
  ['48 megapixels', roll.shot('IMG_0048.jpg', { megapixels: 48, orientation: 6 })] as const,
]);
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

let browser: Browser;
let phone: Phone;
let packId: string;
let pdf: SavedFile;
let bundle: SavedFile;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, { name: 'Photo pack' });
  await goTo(phone.page, `#/${packId}/photos`);
  await phone.page.getByRole('radio', { name: photoWords.originalsYes }).tap();
});
afterAll(() => browser.close());

async function storedPhotos(): Promise<Map<string, Photo & { id: string }>> {
  const entries = (await storedEntries(phone.page)).filter(({ key, gone }) => key[1] === 'photo' && !gone);
  return new Map(entries.map(({ key, v }) => [(v as Photo).originalSha256, { ...(v as Photo), id: key[2] }]));
}

it('takes in nine photographs picked at once, 12 megapixels in each orientation and one of 48', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/photos`);
  await photograph(page, [...shots.values()], { by: photoWords.add, from: photoWords.fromPhone });
  await expect.poll(() => page.locator('.thumb').count(), { timeout: 30_000 }).toBe(9);
  expect((await storedPhotos()).size).toBe(9);
});

it('keeps the time taken and the SHA-256 of each original in the record', async () => {
  const photos = await storedPhotos();
  for (const [name, path] of shots) {
    expect(photos.get(sha256(readFileSync(path))), name).toMatchObject({ takenAt: TAKEN_AT });
  }
});

it.each([...shots.keys()])('shows the photograph of %s upright in the app', async (name) => {
  const { page } = phone;
  const photo = (await storedPhotos()).get(sha256(readFileSync(shots.get(name) ?? '')));
  const landscape = /[1-4]$/.test(name);
  expect(photo).toMatchObject(landscape ? { widthPx: 2048, heightPx: 1536 } : { widthPx: 1536, heightPx: 2048 });
  await goTo(page, `#/${packId}/photo/${photo?.id}`);
  expectUpright(await coloursOfImage(page, '.about-photo img'), name);
});

it('prints all nine upright in the PDF, as another program decodes them', async () => {
  pdf = await savePdf(phone.page, packId);
  const pictures = await pdfPictures(pdf.bytes.buffer);
  expect(pictures.length).toBe(9);
  pictures.forEach(({ colours, straight }, index) => {
    expect(straight).toBe(true);
    expectUpright(colours, `picture ${index + 1}`);
  });
  expect(pictures.filter(({ widthPx, heightPx }) => widthPx > heightPx).length).toBe(4);
});

it('leaves the position nowhere: not in the database with its 9 kept originals, the bundle or the PDF', async () => {
  for (const path of shots.values()) expect(holdsPosition(readFileSync(path))).toBe(true);
  const stored = await everythingStored(phone.page);
  const shelf = (name: string) => stored.bytes.filter(({ store }) => store === name);
  expect(['photos', 'thumbs', 'originals'].map((name) => shelf(name).length)).toEqual([9, 9, 9]);
  expect(shelf('originals').every(({ bytes }) => bytes.length > 2_000_000)).toBe(true);
  for (const { store, key, bytes } of stored.bytes) expect(holdsPosition(bytes), `${store} ${key}`).toBe(false);
  expect(holdsPosition(Buffer.from(stored.text))).toBe(false);

  bundle = await saveBundle(phone.page);
  const files = Object.entries(unzipSync(bundle.bytes));
  expect(files.filter(([path]) => path.startsWith('originals/')).length).toBe(9);
  for (const [path, bytes] of files) expect(holdsPosition(bytes), path).toBe(false);
  for (const file of [bundle, pdf]) expect(holdsPosition(file.bytes), file.name).toBe(false);
});

it.each([
  ['a truncated JPEG', 'damaged', 'half.jpg', truncated],
  ['an HEIC file', 'cannotDecode', 'IMG_0001.heic', heicStub],
  ['a PDF renamed .jpg', 'notAPicture', 'scan.jpg', pdfAsJpeg],
  ['an empty file', 'empty', 'nothing.jpg', empty],
] as const)('says of %s what is wrong and what to do, and loses nothing', async (_, problem, name, make) => {
  const { page } = phone;
  await goTo(page, `#/${packId}/photos`);
  const before = (await storedEntries(page)).length;
  await photograph(page, roll.put(name, make()), { by: photoWords.add, from: photoWords.fromPhone });
  await page.getByRole('alert').getByText(photoProblemSentence(problem, name), { exact: true }).waitFor();
  expect((await storedEntries(page)).length).toBe(before);
  // And the tray still takes a good one.
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, photoWords.camera)]);
  await chooser.setFiles(shots.get('orientation 1') ?? '');
  await openPhotoId(page);
  expect((await storedPhotos()).size).toBe(9);
});
