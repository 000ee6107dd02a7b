import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { Answer } from '../../src/schema/answer.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { fieldWords } from '../../src/text/fields.ts';
import { GRADE_WORDS } from '../../src/text/grades.ts';
import { itemWords } from '../../src/text/item.ts';
import { nameplateWords } from '../../src/text/nameplate.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { beginPack, choose, savedAs } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { goTo, tapButton, untilSaved } from './driver/screen.ts';

const POSTS = builtInItem('terminal-posts');
const HANDLES = builtInItem('handles');
const CAPS = builtInItem('terminal-caps');
const NAME = nameplateWords.labels.name;

let browser: Browser;
let phone: Phone;
let packId: string;
let left: Page;
let right: Page;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  phone = await emptyPhone(browser);
  left = phone.page;
  packId = await beginPack(left, { name: 'Two tabs' });
  right = await phone.context.newPage();
  await right.goto(appUrl(`#/${packId}`));
  await right.locator('h1').waitFor();
});

const item = (page: Page, itemId: string) => goTo(page, `#/${packId}/item/${itemId}`);
const shownGrade = (page: Page) =>
  page.locator('[data-grade][aria-checked="true"]').first().getAttribute('data-grade', { timeout: 5000 });
const gradeStored = async (itemId: string) => {
  const answer = storedValue(await storedEntries(left), 'answer', itemId) as Answer | undefined;
  return answer?.kind === 'grade' ? answer.grade : null;
};
/** Waits until the screen shows the grade without having been touched. */
const untilShown = (page: Page, grade: Grade) => page.locator(`[data-grade="${grade}"][aria-checked="true"]`).waitFor();

it('different items answered in two tabs, in turn and at once, are all kept, and each tab shows the other’s', async () => {
  await item(left, POSTS.id);
  await item(right, HANDLES.id);
  await choose(left, 'weak', POSTS.id);
  await choose(right, 'passable', HANDLES.id);
  await Promise.all([choose(left, 'failed', POSTS.id), choose(right, 'sound', HANDLES.id)]);
  expect([await gradeStored(POSTS.id), await gradeStored(HANDLES.id)]).toEqual(['failed', 'sound']);
  await item(left, HANDLES.id);
  await item(right, POSTS.id);
  await untilShown(left, 'sound');
  await untilShown(right, 'failed');
  expect(phone.complaints).toEqual([]);
});

it('one item on both screens: an answer in one tab shows in the other by itself', async () => {
  await item(left, POSTS.id);
  await item(right, POSTS.id);
  await choose(left, 'weak', POSTS.id);
  await untilShown(right, 'weak');
  await choose(right, 'sound', POSTS.id);
  await untilShown(left, 'sound');
});

it('one item answered in both tabs at the same moment, 4 times over, ends the same on both screens and in storage', async () => {
  await item(left, POSTS.id);
  await item(right, POSTS.id);
  for (let round = 0; round < 2; round += 1) {
    for (const [one, other] of [
      ['weak', 'passable'],
      ['sound', 'failed'],
    ] as const) {
      await Promise.all([left.locator(`[data-grade="${one}"]`).tap(), right.locator(`[data-grade="${other}"]`).tap()]);
      for (const page of [left, right]) await page.getByText(`✓ ${words.saved}`).waitFor();
      const stored = await expect
        .poll(() => gradeStored(POSTS.id))
        .not.toBeNull()
        .then(() => gradeStored(POSTS.id));
      expect([one, other]).toContain(stored);
      await expect.poll(async () => [await shownGrade(left), await shownGrade(right)]).toEqual([stored, stored]);
    }
  }
});

it('Undo in one tab takes back what that tab did, though the other has answered since', async () => {
  await item(left, POSTS.id);
  await choose(left, 'weak', POSTS.id);
  await item(right, CAPS.id);
  await choose(right, 'failed', CAPS.id);
  // The left screen still offers its own.
  await left.locator('.saved-what').getByText(savedAs(POSTS.id, 'weak'), { exact: true }).waitFor();
  await tapButton(left, words.undo);
  await left.getByText(words.takenBack(`${POSTS.title}: ${GRADE_WORDS.weak}`)).waitFor();
  expect([await gradeStored(POSTS.id), await gradeStored(CAPS.id)]).toEqual([null, 'failed']);
  await untilShown(right, 'failed');
  await right.locator('.saved-what').getByText(savedAs(CAPS.id, 'failed'), { exact: true }).waitFor();
});

it('a note and a grade of one item, written in two tabs, are both kept', async () => {
  await item(left, POSTS.id);
  await item(right, POSTS.id);
  await tapButton(left, itemWords.note);
  await left.getByLabel(itemWords.noteHint).fill('left post turns');
  await choose(right, 'failed', POSTS.id);
  await tapButton(left, itemWords.keepNote);
  await untilSaved(left, `${POSTS.title}: ${itemWords.note}`);
  expect(storedValue(await storedEntries(left), 'answer', POSTS.id)).toMatchObject({
    grade: 'failed',
    note: 'left post turns',
  });
});

it('a box changed in the other tab shows the newer text at once, also where it has the focus but is not being typed in', async () => {
  await goTo(left, `#/${packId}/nameplate`);
  await goTo(right, `#/${packId}/nameplate`);
  const [here, there] = [left, right].map((page) => page.getByLabel(NAME, { exact: true }));
  await here?.fill('Wren');
  await expect.poll(() => there?.inputValue()).toBe('Wren');
  await there?.fill('Dipper');
  await there?.blur();
  await untilSaved(right, NAME);
  await expect.poll(() => here?.inputValue()).toBe('Dipper');
  expect(storedValue(await storedEntries(left), 'nameplate', 'name')).toBe('Dipper');
});

it('a box that is being typed in keeps its letters, says what the other tab wrote, and then stands', async () => {
  await goTo(left, `#/${packId}/nameplate`);
  await goTo(right, `#/${packId}/nameplate`);
  const here = left.getByLabel(NAME, { exact: true });
  await here.fill('');
  await expect.poll(() => right.getByLabel(NAME, { exact: true }).inputValue()).toBe('');
  const typing = here.pressSequentially('Wren 24 of the second delivery', { delay: 120 });
  await right.getByLabel(NAME, { exact: true }).fill('Dipper');
  await right.getByLabel(NAME, { exact: true }).blur();
  await left.getByText(fieldWords.elsewhere('Dipper')).waitFor();
  await typing;
  await here.blur();
  await untilSaved(left, NAME);
  await expect.poll(async () => storedValue(await storedEntries(left), 'nameplate', 'name')).toBe('Wren 24 of the second delivery'); // biome-ignore format: one line
  await expect.poll(() => right.getByLabel(NAME, { exact: true }).inputValue()).toBe('Wren 24 of the second delivery');
  expect(await left.getByText(fieldWords.elsewhere('Dipper')).count()).toBe(0);
});
