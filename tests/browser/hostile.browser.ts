import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BundleRefusal } from '../../src/schema/bundle.ts';
import { bundleRefusals, hiddenCharacterName, nothingChanged } from '../../src/text/bundle.ts';
import { calloutWords } from '../../src/text/callouts.ts';
import { checklistsWords } from '../../src/text/checklists.ts';
import { itemWords } from '../../src/text/item.ts';
import { keepWords } from '../../src/text/keep.ts';
import { fileRefusals, logWords } from '../../src/text/logs/log.ts';
import { mappingWords } from '../../src/text/logs/mapping.ts';
import { type PhotoProblem, photoProblemSentence } from '../../src/text/photos.ts';
import { CATALOGUE } from '../hostile/catalogue.ts';
import type { HostileFile } from '../hostile/hostile-file.ts';
import { SCRIPTS } from '../hostile/hostile-texts.ts';
import { scriptedBundle } from '../hostile/scripted-bundle.ts';
import { PHOTO_ID, SOUND_PACK, soundBundle } from '../hostile/sound-bench.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored } from './driver/database.ts';
import { dumpOf } from './driver/dump.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { LIVE_TEST_LINES } from './driver/live-screens.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { restoreBundles, savePdf } from './driver/save.ts';
import { atRest, goTo, keepPart, tapButton } from './driver/screen.ts';

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let page: Page;
let ownId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  ({ page } = phone);
  phone.context.on('dialog', (dialog) => phone.complaints.push(`dialog: ${dialog.message()}`));
  ownId = await beginPack(page, { name: 'Own pack', ratedCapacityAh: '100' });
  await restoreBundles(page, roll.put('sound.zip', await soundBundle()));
  await page.getByText(keepWords.restored('sound.zip'), { exact: true }).waitFor();
});
afterEach(async () => {
  expect(await page.evaluate(() => Reflect.get(globalThis, 'ran'))).toBeUndefined();
  expect(phone.complaints).toEqual([]);
});
afterAll(() => browser.close());

type Handed = { name: string; path: string; reason: string };

/** Files of a kind as they lie on the phone, with what they are to be refused for. */
async function onPhone(
  kind: HostileFile['kind'],
  ending: string,
  is: 'refused' | 'taken' = 'refused',
): Promise<Handed[]> {
  const files = CATALOGUE.filter((file) => file.kind === kind && file.expect.is === is);
  return Promise.all(
    files.map(async (file, place) => {
      const name = `${kind}-${place + 1}.${ending}`;
      const reason = file.expect.is === 'refused' ? file.expect.reason : '';
      return { name, path: roll.put(name, await file.bytes()), reason };
    }),
  );
}

async function said(selector: string, text: string): Promise<void> {
  await page.locator(selector).getByText(text, { exact: true }).waitFor({ timeout: 30_000 });
}

it('bundles: 45 or more handed over at once are each refused with a sentence; the phone is as it was, byte for byte', async () => {
  const files = await onPhone('bundle', 'zip');
  expect(files.length).toBeGreaterThanOrEqual(45);
  await goTo(page, '#/keep');
  const before = await dumpOf(page);
  expect(before).toContain('Sound pack');
  await page.locator('[data-restore]').setInputFiles(files.map(({ path }) => path));
  await page
    .locator('.notice')
    .nth(files.length - 1)
    .waitFor({ timeout: 60_000 });
  const shown = await page.locator('.notice p:first-child').allTextContents();
  expect(shown).toEqual(
    files.map(({ name, reason }) =>
      keepWords.refusedFile(name, `${bundleRefusals[reason as BundleRefusal]} ${nothingChanged}`),
    ),
  );
  expect(await dumpOf(page)).toBe(before);
});

it('checklists: 20 or more are each refused with a sentence and what is wrong where', async () => {
  const files = await onPhone('definition', 'json');
  expect(files.length).toBeGreaterThanOrEqual(20);
  await goTo(page, '#/');
  await goTo(page, '#/keep');
  await keepPart(page, 'checklists');
  const box = page.locator('input[type="file"]').and(page.getByLabel(checklistsWords.load, { exact: true }));
  await box.waitFor({ state: 'attached' });
  const before = await dumpOf(page);
  for (const { name, path } of files) {
    await box.setInputFiles(path);
    const sentence = page.getByRole('status').filter({ hasText: `${name}: ` });
    await sentence.getByText(checklistsWords.refused(name, ''), { exact: false }).or(sentence).first().waitFor();
    expect(await sentence.textContent()).toMatch(/Nothing on this phone was changed\./);
  }
  expect(await dumpOf(page)).toBe(before);
});

it('logs: each is refused with a sentence, or shown as plain text; nothing is written before Keep', async () => {
  const refusals: Readonly<Record<string, (name: string) => string>> = {
    empty: fileRefusals.empty,
    spreadsheet: fileRefusals.spreadsheet,
    binary: fileRefusals.binary,
    noTime: () => mappingWords.refusals.noTime,
    noNumbers: () => mappingWords.refusals.noNumbers,
  };
  const files = [...(await onPhone('log', 'csv')), ...(await onPhone('log', 'txt', 'taken'))];
  expect(files.length).toBeGreaterThanOrEqual(15);
  const before = await dumpOf(page);
  let texts = '';
  for (const { name, path, reason } of files) {
    await goTo(page, `#/${ownId}/live-test/log`);
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, logWords.pick)]);
    await chooser.setFiles(path);
    if (reason === '') await page.getByRole('heading', { name: logWords.runs }).waitFor({ timeout: 30_000 });
    else await said('[role=alert]', refusals[reason]?.(name) ?? 'no such reason');
    // biome-ignore lint/performance/useDomNodeTextContent: what can be seen is asked for
    texts += await page.locator('body').innerText();
    const aside = page.getByRole('button', { name: logWords.putAside, exact: true });
    if ((await aside.count()) > 0) await aside.tap();
  }
  expect(texts).toContain('<img src=x onerror=');
  expect(texts).not.toMatch(/[\u202a-\u202e\u2066-\u2069]|NaN|Infinity/);
  expect(await dumpOf(page)).toBe(before);
});

it('pictures: each is refused with a sentence of its own by the photo intake', async () => {
  const files = await onPhone('picture', 'jpg');
  expect(files.length).toBeGreaterThanOrEqual(10);
  await goTo(page, `#/${ownId}/item/handles`);
  await tapButton(page, itemWords.photo);
  const box = page.locator('[data-photo="phone"]');
  const [first, ...others] = files;
  // The first leaves the note that a photo was awaited: from then on nothing may change.
  await box.setInputFiles(first?.path ?? '');
  await said('[role=alert]', photoProblemSentence(first?.reason as PhotoProblem, first?.name ?? ''));
  const before = await dumpOf(page);
  await box.setInputFiles(others.map(({ path }) => path));
  await page
    .locator('[role=alert]')
    .nth(others.length - 1)
    .waitFor({ timeout: 60_000 });
  expect(await page.locator('[role=alert]').allTextContents()).toEqual(
    others.map(({ name, reason }) => photoProblemSentence(reason as PhotoProblem, name)),
  );
  expect(await dumpOf(page)).toBe(before);
});

it('what hides in a bundle’s texts is taken out, and said: each entry with its character', async () => {
  const other = await emptyPhone(browser);
  const file = CATALOGUE.find(({ name }) => name === 'a name that runs backwards');
  await restoreBundles(other.page, roll.put('backwards.zip', (await file?.bytes()) ?? new Uint8Array()));
  await other.page.getByText(keepWords.cleaned(1), { exact: true }).waitFor();
  await other.page.getByText(hiddenCharacterName('U+202E')).waitFor();
  expect(await dumpOf(other.page)).toMatch(/"Wren42"/);
  expect(other.complaints).toEqual([]);
  await other.context.close();
});

it('a picture with a page, a zip or a script in it is stored as the picture alone', async () => {
  const files = await onPhone('picture', 'jpeg', 'taken');
  expect(files).toHaveLength(3);
  await goTo(page, `#/${ownId}/item/terminal-posts`);
  await tapButton(page, itemWords.photo);
  await page.locator('[data-photo="phone"]').setInputFiles(files.map(({ path }) => path));
  await page.getByRole('dialog').waitFor({ state: 'hidden', timeout: 30_000 });
  const photos = (await everythingStored(page)).bytes.filter(({ store }) => store === 'photos');
  expect(photos.length).toBeGreaterThanOrEqual(2);
  expect(photos.filter(({ bytes }) => /script|PK/.test(bytes.toString('latin1')))).toEqual([]);
});

it('a record and a checklist with a script in every text stand on every screen and in the PDF as plain text', async () => {
  // A phone of its own: the sound pack of the same id is not to be newer.
  const other = await emptyPhone(browser);
  const { page: screen, complaints } = other;
  screen.on('dialog', (dialog) => complaints.push(`dialog: ${dialog.message()}`));
  await restoreBundles(screen, roll.put('scripted.zip', await scriptedBundle()));
  await screen.getByText(keepWords.restored('scripted.zip'), { exact: true }).waitFor();
  const at = (place: string) => `#/${SOUND_PACK}${place}`;
  const places = [
    ...['', '/nameplate', '/arrival', '/live-tests', '/make-safe', '/lid-off', '/zone/case', '/item/cell-vents'],
    ...['/item/swollen', '/fact/metal-case', '/before', '/photos', `/photo/${PHOTO_ID}`, `/photo/${PHOTO_ID}%2Fnew`],
    ...['/afterwards', '/since', '/sheet'],
    ...LIVE_TEST_LINES.map((line) => `/live-test/${line}`),
  ];
  let texts = '';
  for (const hash of ['#/', '#/keep', '#/keep/regrade', ...places.map(at)]) {
    // Drawing fills the whole screen and has no heading.
    if (hash.endsWith('%2Fnew')) {
      await screen.goto(appUrl(hash));
      await screen.getByRole('region', { name: calloutWords.editor }).waitFor();
    } else await goTo(screen, hash);
    if (hash.endsWith('/sheet')) await screen.getByRole('article').waitFor();
    await atRest(screen);
    texts += await screen.evaluate(() => {
      const typed = [...document.querySelectorAll('input, textarea')].map((box) => (box as HTMLInputElement).value);
      // biome-ignore lint/performance/useDomNodeTextContent: what can be seen is asked for
      return [document.title, document.body.innerText, ...typed].join('\n');
    });
    const made =
      'script:not([src]):not([type]), iframe, [onerror], [onload], a[href^="javascript:" i], main img[src="x"]';
    expect(await screen.locator(`body :is(${made})`).count(), hash).toBe(0);
  }
  for (const script of SCRIPTS) expect(texts.includes(script), script).toBe(true);
  expect(texts).not.toMatch(/NaN|Infinity|\bundefined\b/);
  const pdf = await savePdf(screen, SOUND_PACK);
  expect(Buffer.from(pdf.bytes.subarray(0, 5)).toString()).toBe('%PDF-');
  expect(await screen.evaluate(() => Reflect.get(globalThis, 'ran'))).toBeUndefined();
  expect(complaints).toEqual([]);
  await other.context.close();
});
