import { createHash } from 'node:crypto';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { SealedSheet } from '../../src/schema/sealed-sheet.ts';
import { benchWords } from '../../src/text/bench.ts';
import { closingWords as say } from '../../src/text/closing-screens.ts';
import { itemWords } from '../../src/text/item.ts';
import { nameplateWords } from '../../src/text/nameplate.ts';
import { sheetClosingWords } from '../../src/text/sheet-closing.ts';
import { words, writeProblems } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, slipIn, storedEntries, storedValue } from './driver/database.ts';
import { failWrites } from './driver/failing-writes.ts';
import { answer, beginPack, writeNote } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { photograph } from './driver/photo.ts';
import { saved, savePdf } from './driver/save.ts';
import { button, goTo, link, tapButton } from './driver/screen.ts';

const POSTS = builtInItem('terminal-posts');
const HANDLES = builtInItem('handles');
const roll = cameraRoll();
const sha256 = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, { name: 'Heron 24', maker: 'Heron Works' });
  await answer(phone.page, { packId, itemId: POSTS.id }, 'weak');
});
afterAll(() => browser.close());

const toItem = (itemId: string) => goTo(phone.page, `#/${packId}/item/${itemId}`);
const toSheet = async (sha = '') => {
  await goTo(phone.page, `#/${packId}`);
  await goTo(phone.page, `#/${packId}/sheet${sha === '' ? '' : `/${sha}`}`);
  await phone.page.locator('[data-standing]').waitFor();
};
const why = (page: Page) => page.getByRole('dialog', { name: say.why.title });
const closings = async () => (await storedEntries(phone.page)).filter(({ key }) => key[1] === 'closing');

async function closeIt(label: string): Promise<void> {
  await tapButton(phone.page, label);
  await tapButton(phone.page, say.dialog.now);
  await phone.page.locator('[data-standing="closed"]').waitFor();
}

async function giveReason(reason: string, revision: number): Promise<void> {
  const dialog = why(phone.page);
  await dialog.getByText(say.why.ask(revision)).waitFor();
  await dialog.getByLabel(say.why.reason).fill(reason);
  await dialog.getByRole('button', { name: say.why.make(revision) }).tap();
}

async function faults(page: Page): Promise<string[]> {
  await page.setViewportSize({ width: 320, height: 568 });
  const found = [...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))];
  await page.setViewportSize({ width: 390, height: 844 });
  return found;
}

it('an open sheet says so; closing lists what is open, and a write that fails closes nothing', async () => {
  const { page } = phone;
  await toSheet();
  await page.locator('.sheet').getByText(sheetClosingWords.standing.open).first().waitFor();
  await tapButton(page, say.close);
  const dialog = page.getByRole('dialog', { name: say.dialog.title(1) });
  await dialog.getByText(say.dialog.noPhoto([POSTS.title])).waitFor();
  expect(await faults(page)).toEqual([]);
  const mend = await failWrites(page, 'aborted');
  await tapButton(page, say.dialog.now);
  await dialog.getByText(writeProblems.failed).waitFor();
  await mend();
  expect(await closings()).toEqual([]);
  await tapButton(page, words.cancel);
  await page.reload();
  await button(page, say.close).waitFor();
});

it('closed, it is revision 1: the PDF holds the SHA-256, and it is that of the saved JSON file', async () => {
  const { page } = phone;
  await toSheet();
  await closeIt(say.close);
  expect(await faults(page)).toEqual([]);
  const json = await saved(page, say.saveJson);
  expect(json.name).toBe('underlid-Heron-24-sample-1-revision-1.json');
  const [closing] = await closings();
  expect(sha256(json.bytes)).toBe(closing?.key[2]);
  expect((JSON.parse(Buffer.from(json.bytes).toString()) as SealedSheet).revision).toBe(1);
  const pdf = await savePdf(page, packId);
  expect(pdf.name).toBe('underlid-Heron-24-sample-1-revision-1.pdf');
  expect((await readPdf(pdf.bytes.buffer)).text.replace(/\s/g, '')).toContain(sha256(json.bytes));
});

it('says on every screen that it is closed; a changed answer asks why, and Cancel shows the old one again', async () => {
  const { page } = phone;
  await toItem(POSTS.id);
  await link(page, say.line(1)).waitFor();
  await page.locator('[data-grade="failed"]').tap();
  await why(page).getByText(say.why.ask(2)).waitFor();
  expect(await page.locator('[data-grade="failed"]').getAttribute('aria-checked')).toBe('true');
  expect(await faults(page)).toEqual([]);
  await why(page).getByRole('button', { name: say.why.drop }).tap();
  await page.locator('[data-grade="weak"][aria-checked="true"]').waitFor();
  expect(storedValue(await storedEntries(page), 'answer', POSTS.id)).toMatchObject({ grade: 'weak' });
});

it('a box of the nameplate shows the stored words again after Cancel', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/nameplate`);
  const box = page.getByLabel(nameplateWords.labels.maker, { exact: true });
  await box.fill('Another maker');
  await box.blur();
  await why(page).getByRole('button', { name: say.why.drop }).tap();
  await expect.poll(() => box.inputValue()).toBe('Heron Works');
});

it('a photo taken waits with its question: Cancel asks once more, and with the reason it is there', async () => {
  const { page } = phone;
  await toItem(POSTS.id);
  await photograph(page, roll.shot('posts.jpg'), { by: itemWords.photo });
  await why(page).waitFor();
  await why(page).getByRole('button', { name: say.why.drop }).tap();
  await tapButton(page, say.why.dropNot);
  expect((await storedEntries(page)).filter(({ key }) => key[1] === 'photo')).toEqual([]);
  await giveReason('The photo was forgotten.', 2);
  await expect.poll(async () => (await storedEntries(page)).filter(({ key }) => key[1] === 'photo')).toHaveLength(1);
});

it('being revised it asks no more; revision 2 lists both, and revision 1 is still there as it was', async () => {
  const { page } = phone;
  await answer(page, { packId, itemId: HANDLES.id }, 'failed');
  await writeNote(page, HANDLES.id, 'One side only.');
  await goTo(page, `#/${packId}`);
  await page.getByText(say.station.revising(2)).waitFor();
  await toSheet();
  await page.locator('.sheet').getByText('The photo was forgotten.').first().waitFor();
  await closeIt(say.closeNext(2));
  const [one, two] = (await closings()).sort((a, b) => (a.at < b.at ? -1 : 1));
  expect(two?.v).toMatchObject({ revision: 2, reason: 'The photo was forgotten.', after: one?.key[2] });
  const sheet = page.locator('.sheet');
  await sheet.getByText('One side only.').first().waitFor();
  await page.locator('.lines').getByText(say.revision(1)).tap();
  await link(page, say.toNewest(2)).waitFor();
  await sheet
    .getByText(/Revision 1, replaced by revision 2/)
    .first()
    .waitFor();
  expect(await sheet.getByText('One side only.').count()).toBe(0);
  expect(await faults(page)).toEqual([]);
});

it('the PDF of the closed sheet is the same bytes again, after a reload and another day’s clock', async () => {
  const { page } = phone;
  await toSheet();
  const first = await savePdf(page, packId);
  await page.clock.install({ time: Date.now() + 40 * 86_400_000 });
  await page.reload();
  await page.locator('[data-standing="closed"]').waitFor();
  const again = await savePdf(page, packId);
  expect(sha256(again.bytes)).toBe(sha256(first.bytes));
});

it('a maker’s reply is attached without opening the sheet, stands in the PDF, and can be taken away', async () => {
  const { page } = phone;
  await toSheet();
  await tapButton(page, say.attach.makerReply);
  const dialog = page.getByRole('dialog', { name: say.attach.makerReply });
  await dialog.getByLabel(say.attach.text.makerReply).fill('We fit another handle since May.');
  await dialog.getByLabel(say.attach.from.makerReply).fill('Heron Works');
  await dialog.getByLabel(say.attach.from.makerReply).blur();
  expect(await faults(page)).toEqual([]);
  await dialog.getByRole('button', { name: say.attach.now }).tap();
  await page.locator('.sheet').getByText('We fit another handle since May.').first().waitFor();
  expect(await closings()).toHaveLength(2);
  expect((await readPdf((await savePdf(page, packId)).bytes.buffer)).text).toContain('We fit another handle');
  await toSheet();
  await tapButton(page, say.attach.takeAway);
  await page.getByRole('dialog').getByRole('button', { name: say.attach.takeAway }).tap();
  await expect.poll(() => page.locator('.sheet').getByText('We fit another handle since May.').count()).toBe(0);
});

it('the bench card and the station say closed; undo asks why as well', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}`);
  await page.locator('.line .side').getByText(say.station.closed(2)).waitFor();
  await tapButton(page, words.undo);
  await why(page).getByRole('button', { name: say.why.drop }).tap();
  await goTo(page, '#/');
  await page.locator('.bench-card').getByText(benchWords.closed, { exact: true }).waitFor();
});

it('entries that came in past it are counted, with the way to a revision that has them', async () => {
  const { page } = phone;
  await slipIn(page, [packId, 'words', 'opinion'], 'From another phone.');
  await page.reload();
  await goTo(page, `#/${packId}`);
  await page.getByText(say.comeIn(1)).waitFor();
  await toSheet();
  await page.locator('[data-standing]').getByText(say.comeIn(1)).waitFor();
  expect(await page.locator('.sheet').getByText('From another phone.').count()).toBe(0);
  await tapButton(page, say.why.make(3));
  await why(page)
    .getByRole('button', { name: say.why.make(3) })
    .tap();
  await page.locator('[data-standing="revising"]').waitFor();
  await page.locator('.sheet').getByText('From another phone.').waitFor();
});

it('a page that ends at 8 moments of closing leaves the sheet open or closed with its JSON, never half', async () => {
  const { context } = phone;
  const outcomes: string[] = [];
  for (const waitMs of [0, 2, 4, 8, 16, 32, 64, 400]) {
    const page = await context.newPage();
    await page.goto(appUrl(`#/${packId}/sheet`));
    const before = await closings();
    await page.getByRole('button', { name: /^Close revision/ }).tap();
    await page.getByRole('button', { name: say.dialog.now }).tap();
    await page.waitForTimeout(waitMs);
    await page.close();
    const stored = await everythingStored(phone.page);
    const after = await closings();
    const sealed = stored.bytes.filter(({ store }) => store === 'sealed').map(({ bytes }) => sha256(bytes));
    expect(sealed.sort()).toEqual(after.map(({ key }) => key[2]).sort());
    outcomes.push(after.length > before.length ? 'closed' : 'open');
    if (after.length > before.length) await openAgain(phone.page);
  }
  expect(outcomes).toContain('closed');
});

/** So that the next round can close it again. Read anew: a page that ended with its write may have told no other tab. */
async function openAgain(page: Page): Promise<void> {
  await page.reload();
  await toSheet();
  await goTo(page, `#/${packId}/item/${HANDLES.id}`);
  const other = (await page.locator('[data-grade="weak"]').getAttribute('aria-checked')) === 'true' ? 'failed' : 'weak';
  await page.locator(`[data-grade="${other}"]`).tap();
  await why(page).getByLabel(say.why.reason).fill('Round.');
  await why(page)
    .getByRole('button', { name: /^Make revision/ })
    .tap();
  await expect
    .poll(async () => storedValue(await storedEntries(page), 'answer', HANDLES.id))
    .toMatchObject({ grade: other });
}

it('made no complaint', async () => {
  expect(phone.complaints.filter((text) => !text.includes('forced'))).toEqual([]);
});
