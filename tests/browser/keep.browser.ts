import { createHash } from 'node:crypto';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Entry } from '../../src/schema/entry.ts';
import { benchWords } from '../../src/text/bench.ts';
import { bundleRefusals, hiddenCharacterName, nothingChanged, nothingTaken } from '../../src/text/bundle.ts';
import { formatDay, localDay } from '../../src/text/format-day.ts';
import { itemWords } from '../../src/text/item.ts';
import { keepWords } from '../../src/text/keep.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { forge, json } from '../storage/bundle/bench-of-packs.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries, storedValue } from './driver/database.ts';
import { drawByTouch, writeOnCallout } from './driver/draw.ts';
import { answer, beginPack, writeNote } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { leaveCallouts, photographItem, untilCalloutsSaved } from './driver/photo.ts';
import { restoreBundles, type SavedFile, saveBundle } from './driver/save.ts';
import { button, goTo, tapButton, untilSaved } from './driver/screen.ts';
import { genuinePhoto } from './photographs/genuine-photo.ts';

const roll = cameraRoll();
let browser: Browser;
let first: Phone;
let packId: string;
let bundle: SavedFile;
const LABEL = words.packLabel('Kept', '1');

beforeAll(async () => {
  browser = await launchBrowser();
  first = await emptyPhone(browser);
  const { page } = first;
  packId = await beginPack(page, { name: 'Kept', nominalVoltageV: '12.8', ratedCapacityAh: '100', cellsInSeries: '4' });
  await answer(page, { packId, itemId: 'handles' }, 'weak');
  await answer(page, { packId, itemId: 'terminal-posts' }, 'failed');
  await writeNote(page, 'terminal-posts', 'Loose by a quarter turn, 3 mΩ');
  for (const file of [roll.put('genuine.jpg', genuinePhoto()), roll.shot('posts.jpg', { orientation: 8 })]) {
    await photographItem(page, file);
    await drawByTouch(page, 'leader', [
      [0.4, 0.4],
      [0.5, 0.5],
    ]);
    await writeOnCallout(page, 'leader', 'turns by hand');
    await drawByTouch(page, 'arrow', [
      [0.2, 0.7],
      [0.5, 0.75],
      [0.7, 0.8],
    ]);
    await untilCalloutsSaved(page);
    await leaveCallouts(page);
  }
});
afterAll(() => browser.close());

/** What the phone shows of a pack: verdict, score and how much is settled; and what it holds. */
async function picture(page: Page) {
  await goTo(page, `#/${packId}`);
  const said = await page.locator('main section').first().textContent();
  const rule = await page.locator('.rule svg').getAttribute('aria-label');
  const { bytes } = await everythingStored(page);
  const hashes = bytes.map(
    ({ store, bytes: content }) => `${store} ${createHash('sha256').update(content).digest('hex')}`,
  );
  return { said, rule, hashes: hashes.sort(), entries: sorted(await storedEntries(page)) };
}

const sorted = (entries: Entry[]) =>
  [...entries].sort((a, b) => (JSON.stringify(a.key) < JSON.stringify(b.key) ? -1 : 1));

it('saves everything as one bundle and counts no photo without a backup any more', async () => {
  const { page } = first;
  await goTo(page, '#/keep');
  await page.getByText(keepWords.noBackup({ photos: 2, logs: 0, voices: 0 }), { exact: true }).waitFor();
  bundle = await saveBundle(page);
  expect(bundle.name).toMatch(/^underlid-\d{4}-\d\d-\d\d-[0-9a-f]{6}\.zip$/);
  await page.getByText(keepWords.savedAll, { exact: true }).waitFor();
  await page.getByText(keepWords.allBackedUp, { exact: true }).waitFor();
});

it('restores it on an empty phone: the same score, the same 2 photos by hash, the same 4 callouts', async () => {
  const second = await emptyPhone(browser);
  await restoreBundles(second.page, bundle.path);
  await second.page.getByText(keepWords.packAdded(LABEL), { exact: true }).waitFor();
  const before = await picture(first.page);
  const after = await picture(second.page);
  expect(after).toEqual(before);
  expect(after.rule).toMatch(/\d/);
  expect(after.hashes.filter((name) => name.startsWith('photos ')).length).toBe(2);
  expect(after.entries.filter(({ key }) => key[1] === 'callout').length).toBe(4);
  // Once more changes nothing.
  await restoreBundles(second.page, bundle.path);
  await second.page.getByText(keepWords.packSame(LABEL), { exact: true }).waitFor();
  expect(await picture(second.page)).toEqual(before);
  await second.context.close();
});

it('refuses a bundle with one byte changed, with a reason, and changes nothing', async () => {
  const second = await emptyPhone(browser);
  const damaged = bundle.bytes.slice();
  const middle = Math.floor(damaged.length / 2);
  damaged[middle] = (damaged[middle] ?? 0) ^ 0xff;
  await restoreBundles(second.page, roll.put('damaged.zip', damaged));
  const sentence = keepWords.refusedFile('damaged.zip', `${bundleRefusals.checksum} ${nothingChanged}`);
  await second.page.getByText(sentence, { exact: true }).waitFor();
  await second.page.getByText(/^In it: (a photo|the original of a photo), (photos|originals)\//).waitFor();
  expect(await storedEntries(second.page)).toEqual([]);
  await second.context.close();
});

it('of three files takes the good one in, after all were checked, and names the two that are not', async () => {
  const second = await emptyPhone(browser);
  const cut = roll.put('cut.zip', bundle.bytes.slice(0, 1000));
  const page = roll.put('page.zip', new TextEncoder().encode('<html><script>alert(1)</script>'));
  await restoreBundles(second.page, cut, bundle.path, page);
  for (const name of ['cut.zip', 'page.zip']) {
    const sentence = keepWords.refusedFile(name, `${bundleRefusals.notAZip} ${nothingTaken}`);
    await second.page.getByText(sentence, { exact: true }).waitFor();
  }
  await second.page.getByText(keepWords.packAdded(LABEL), { exact: true }).waitFor();
  expect((await storedEntries(second.page)).length).toBeGreaterThan(5);
  await second.context.close();
});

/** A place on the phone's own disk in place of the save picker: a real stream writes into it. */
async function withPicker(page: Page, how: 'picks' | 'slow' | 'dismissed'): Promise<void> {
  await page.evaluate((kind) => {
    const pick = async ({ suggestedName }: { suggestedName: string }) => {
      if (kind === 'dismissed') throw new DOMException('dismissed', 'AbortError');
      const folder = await navigator.storage.getDirectory();
      const handle = await folder.getFileHandle(suggestedName, { create: true });
      if (kind === 'picks') return handle;
      const createWritable = async () => {
        const stream = await handle.createWritable();
        const write = async (piece: Blob) => {
          await stream.write(piece);
          await new Promise((resolve) => setTimeout(resolve, 1500));
        };
        return { write, close: () => stream.close(), abort: () => stream.abort() };
      };
      const remove = () => folder.removeEntry(suggestedName);
      return { name: handle.name, createWritable, getFile: () => handle.getFile(), remove };
    };
    Reflect.set(globalThis, 'showSaveFilePicker', pick);
  }, how);
}

/** Names and bytes of what lies in that place. */
async function pickedFiles(page: Page): Promise<{ name: string; bytes: Uint8Array<ArrayBuffer> }[]> {
  const found = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    const files: { name: string; base64: string }[] = [];
    // Typed by hand: the handles of a folder are in no library that the tests are checked with.
    const entries = Reflect.get(folder, 'values').call(folder) as AsyncIterable<FileSystemFileHandle>;
    for await (const handle of entries) {
      const reader = new FileReader();
      reader.readAsDataURL(await handle.getFile());
      await new Promise((resolve) => reader.addEventListener('load', resolve));
      files.push({ name: handle.name, base64: String(reader.result).split(',')[1] ?? '' });
    }
    return files;
  });
  return found.map(({ name, base64 }) => ({ name, bytes: new Uint8Array(Buffer.from(base64, 'base64')) }));
}

const saveButton = (page: Page) => page.getByRole('button', { name: /^Save underlid-.*\.zip$/ });

it('says nothing of a dismissed picker; stopped half way nothing is left; then streams a file that restores', async () => {
  const { page } = first;
  await goTo(page, '#/keep');
  await withPicker(page, 'dismissed');
  await tapButton(page, keepWords.save);
  await page.getByText(/^One bundle, about /).waitFor();
  await saveButton(page).tap();
  await saveButton(page).waitFor();
  expect(await page.locator('section').first().getByRole('status').count()).toBe(0);

  await withPicker(page, 'slow');
  await saveButton(page).tap();
  await page.getByText(/^Writing underlid-/).waitFor();
  await tapButton(page, keepWords.stop);
  await page.getByText(keepWords.stoppedPart, { exact: true }).waitFor();
  expect(await pickedFiles(page)).toEqual([]);

  await withPicker(page, 'picks');
  await saveButton(page).tap();
  await page.getByText(keepWords.savedAll, { exact: true }).waitFor();
  const [file] = await pickedFiles(page);
  if (file === undefined) throw new Error('a file was written');
  const today = formatDay(localDay(Date.now(), 0));
  await page.getByText(`Last backup: ${file.name}, ${today}`).waitFor();
  const second = await emptyPhone(browser);
  await restoreBundles(second.page, roll.put(file.name, file.bytes));
  await second.page.getByText(keepWords.packAdded(LABEL), { exact: true }).waitFor();
  expect(await picture(second.page)).toEqual(await picture(page));
  await second.context.close();
});

it('restores onto a phone with a later state of the pack: what is newer is kept, what was deleted is asked about by name', async () => {
  const second = await emptyPhone(browser);
  const { page } = second;
  await restoreBundles(page, bundle.path);
  await page.getByText(keepWords.packAdded(LABEL), { exact: true }).waitFor();
  await answer(page, { packId, itemId: 'handles' }, 'sound');
  await goTo(page, `#/${packId}/item/terminal-posts`);
  await tapButton(page, itemWords.notSeen);
  await tapButton(page, itemWords.clear);
  await untilSaved(page, `${builtInItem('terminal-posts').title}: ${itemWords.clear}`);
  const callouts = (await storedEntries(page)).filter(({ key, gone }) => key[1] === 'callout' && !gone);

  await restoreBundles(page, bundle.path);
  await page.getByText(keepWords.packNewerHere(LABEL, 1), { exact: true }).waitFor();
  await page.getByText(keepWords.deletedHere(1), { exact: true }).waitFor();
  const name = `${LABEL}: Answer to “${builtInItem('terminal-posts').title}”: failed`;
  await page.getByText(name, { exact: true }).waitFor();
  expect(storedValue(await storedEntries(page), 'answer', 'terminal-posts')).toBeUndefined();

  await tapButton(page, keepWords.bringBack);
  await page.getByText(keepWords.broughtBack(1), { exact: true }).waitFor();
  const after = await storedEntries(page);
  expect(storedValue(after, 'answer', 'terminal-posts')).toMatchObject({ grade: 'failed' });
  expect(storedValue(after, 'answer', 'handles')).toMatchObject({ grade: 'sound' });
  expect(after.filter(({ key, gone }) => key[1] === 'callout' && !gone)).toEqual(callouts);
  await second.context.close();
});

it('lists the texts out of which it took hidden characters, shows script as the text it is, and names a clock ahead', async () => {
  const second = await emptyPhone(browser);
  const { page } = second;
  const script = '<img src=x onerror=alert(1)>';
  const zip = await forge(bundle.bytes, {
    files: (files) => {
      const path = `entries/${packId}.json`;
      const entries = JSON.parse(new TextDecoder().decode(files[path])) as Entry[];
      for (const entry of entries) {
        if (entry.key[2] === 'name') entry.v = `Ke\u202Ept ${script}`;
        // 1 929 960 000 s: noon of 27 February 2031, UTC.
        if (entry.key[2] === 'nominalVoltageV') entry.at = `001929960000000${entry.at.slice(15)}`;
      }
      files[path] = json(entries);
    },
  });
  await restoreBundles(page, roll.put('forged.zip', zip));
  const label = words.packLabel(`Kept ${script}`, '1');
  await page.getByText(keepWords.packAdded(label), { exact: true }).waitFor();
  await page.getByText(keepWords.cleaned(1), { exact: true }).waitFor();
  const line = keepWords.cleanedLine(`${label}: Nameplate: Pack name`, '', hiddenCharacterName('U+202E'));
  await page.getByText(line, { exact: true }).waitFor();
  await page.getByText(keepWords.ahead('forged.zip', formatDay('2031-02-27')), { exact: true }).waitFor();
  await goTo(page, '#/');
  await page.getByText(`Kept ${script}`).first().waitFor();
  expect(await page.locator('img[src="x"]').count()).toBe(0);
  expect(second.complaints).toEqual([]);
  await second.context.close();
});

it('the Bench counts photos in no backup from 8 on, and not once they are saved', async () => {
  const { page } = first;
  const nudge = page.getByRole('link', { name: /photos are in no backup/ });
  await goTo(page, '#/');
  await page.locator('.bench-card').waitFor();
  expect(await nudge.count()).toBe(0);
  await goTo(page, `#/${packId}/item/handles`);
  for (let count = 1; count <= 8; count += 1) {
    await photographItem(page, roll.put(`small-${count}.jpg`, otherPhoto(count)));
    await leaveCallouts(page);
  }
  await goTo(page, '#/');
  await page.getByRole('link', { name: `${benchWords.inNoBackup(8)} ${benchWords.toBackup}`, exact: true }).tap();
  await saveBundle(page);
  await page.getByText(keepWords.allBackedUp, { exact: true }).waitFor();
  await goTo(page, '#/');
  await page.locator('.bench-card').waitFor();
  expect(await nudge.count()).toBe(0);
});

it('a vanished database offers the last backup by its name: one tap, and the way to choose it is in hand', async () => {
  const { page } = first;
  const saved = await saveBundle(page);
  await page.getByText(keepWords.savedAll, { exact: true }).waitFor();
  await page.evaluate(async () => {
    const request = indexedDB.deleteDatabase('underlid');
    await new Promise((resolve) => request.addEventListener('success', resolve));
  });
  await page.goto(appUrl());
  await page.reload();
  await page.getByRole('link', { name: new RegExp(`^Restore ${saved.name} of `) }).tap();
  const choose = button(page, keepWords.choose);
  await choose.waitFor();
  await expect.poll(() => choose.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await choose.evaluate((element) => element.getBoundingClientRect().bottom <= innerHeight)).toBe(true);
  await page.getByText(new RegExp(`^Last backup: ${saved.name}`)).waitFor();
  await restoreBundles(page, saved.path);
  await page.getByText(keepWords.packAdded(LABEL), { exact: true }).waitFor();
  await goTo(page, '#/');
  await page.locator('.bench-card').waitFor();
  expect(await page.getByRole('alert').count()).toBe(0);
});

/** The genuine photograph with another comment, so that its bytes, and those kept of it, differ. */
function otherPhoto(number: number): Uint8Array<ArrayBuffer> {
  const photo = new Uint8Array(genuinePhoto());
  // A byte of the quantisation table: each picture decodes to other pixels.
  const table = Buffer.from(photo).indexOf(Buffer.from([0xff, 0xdb]));
  photo[table + 10] = 3 + number;
  return photo;
}
