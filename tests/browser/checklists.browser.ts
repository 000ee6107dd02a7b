import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Grade } from '../../src/schema/grade.ts';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { carryOverWords } from '../../src/text/carry-over.ts';
import { checklistsWords as say } from '../../src/text/checklists.ts';
import { GRADE_WORDS } from '../../src/text/grades.ts';
import { keepWords } from '../../src/text/keep.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { words } from '../../src/text/words.ts';
import { admittedFile, itemOf } from '../checklists/admitted-file.ts';
import { builtIn } from '../checklists/built-in.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries, storedValue } from './driver/database.ts';
import { beginPack, makeSafe } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { savePdf } from './driver/save.ts';
import { button, expectTitle, goTo, keepPart, tapButton, untilSaved } from './driver/screen.ts';

const RACK_TEXT = readFileSync('checklists/lfp-rack/0.1.0.json', 'utf8');
const rack = admittedFile('lfp-rack/0.1.0');
const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
/** One's own, begun from the file of the built-in one as Keep says to. */
const OWN_TEXT = RACK_TEXT.replace('"lfp-rack"', '"shed-rack"').replace('"Rack-mount LFP pack"', '"Packs of our shed"');

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

async function load(page: Page, name: string, content: string | Uint8Array): Promise<void> {
  await goTo(page, '#/');
  await goTo(page, '#/keep');
  await keepPart(page, 'checklists');
  const path = roll.put(name, typeof content === 'string' ? new TextEncoder().encode(content) : content);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, say.load)]);
  await chooser.setFiles(path);
}

/** On the Nameplate of a pack that has no answer yet. */
async function chooseChecklist(page: Page, title: string): Promise<void> {
  await tapButton(page, say.change);
  await page.getByRole('radio', { name: title }).tap();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByText(say.shown(title, '0.1.0')).waitFor();
}

async function answerRack(page: Page, itemId: string, grade: Grade): Promise<void> {
  await goTo(page, `#/${packId}/item/${itemId}`);
  await page.locator(`[data-grade="${grade}"]`).tap();
  await untilSaved(page, `${itemOf(rack, itemId).title}: ${GRADE_WORDS[grade]}`);
}

it('Keep lists the 2 checklists that come with the app, the 2 earlier versions apart, each with its SHA-256', async () => {
  const { page } = phone;
  await goTo(page, '#/keep');
  const part = await keepPart(page, 'checklists');
  for (const [{ title, items }, text] of [
    [builtIn, readFileSync('checklists/lfp-drop-in/1.1.1.json', 'utf8')],
    [rack, RACK_TEXT],
  ] as const) {
    const line = part.locator('li', { hasText: title }).first();
    await line.getByText(say.items(items.length)).waitFor();
    await line.getByText(say.sha256(sha256(text))).waitFor();
  }
  expect(await part.locator('.lines > li:visible').count()).toBe(2);
  await part.getByText(say.earlier(2)).tap();
  expect(await part.locator('.lines > li:visible').count()).toBe(4);
  expect(await button(page, say.of(say.remove, 'lfp-rack', '0.1.0')).count()).toBe(0);
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 844 });
    expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 844 });
});

it('saves the file of one, to the byte', async () => {
  const { page } = phone;
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    tapButton(page, say.of(say.save, 'lfp-rack', '0.1.0')),
  ]);
  expect(download.suggestedFilename()).toBe('lfp-rack-0.1.0.json');
  expect(readFileSync(await download.path(), 'utf8')).toBe(RACK_TEXT);
});

const wrongZone = JSON.parse(RACK_TEXT);
wrongZone.items[2].zone = 'cellar';
wrongZone.items[3].weight = 1;
wrongZone.remedies[0].settles[0].leaves = 'best';
const unknownNames = JSON.parse(RACK_TEXT);
unknownNames.items[2].zone = 'cellar';
unknownNames.items[4].hazard = 'dragons';
const BAD: [name: string, content: string | Uint8Array, said: RegExp[]][] = [
  ['cut off', RACK_TEXT.slice(0, 200), [/it is not JSON/, /Line \d+, column \d+:/]],
  ['a comma too many', RACK_TEXT.replace('"status": "draft",', '"status": "draft",,'), [/Line 5, column \d+:/]],
  [
    'a grade that is none',
    JSON.stringify(wrongZone),
    [/1 thing is wrong/, /Remedy 1 \(rack-earth\), settles 1, leaves/],
  ],
  [
    'names that nothing has',
    JSON.stringify(unknownNames),
    [
      /3 things are wrong/,
      /Item 3 \(chassis-isolation\), zone “?"cellar" is not named/,
      /Item 5 \(terminal-shrouds\), hazard/,
    ],
  ],
  [
    'text that turns round',
    RACK_TEXT.replace('Earth bond', 'Earth \u202Ebond'),
    [/Item 2 \(earth-bond\), title/, /U\+202E/],
  ],
  [
    'the name of a built-in one',
    RACK_TEXT.replace('"Earth bond"', '"Earthing"'),
    [/Underlid brings a lfp-rack 0\.1\.0/],
  ],
  ['a picture', new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16]), [/not text in UTF-8/]],
  ['five million blanks', ' '.repeat(5_000_000), [/larger than/]],
  ['a byte order mark', `\uFEFF${OWN_TEXT}`, [/byte order mark/]],
  ['nothing', '', [/it is empty/]],
];

it('refuses 10 files, each with its place and reason, and storage is byte-identical before and after', async () => {
  const { page } = phone;
  const before = (await everythingStored(page)).text;
  for (const [name, content, expected] of BAD) {
    await load(page, `${name}.json`, content);
    const said = page.locator('[data-part="checklists"] .notice[role="status"]');
    await said.getByText(`${name}.json: `).waitFor();
    for (const words of expected) expect(await said.textContent()).toMatch(words);
    expect(await said.textContent()).toContain('Nothing on this phone was changed.');
  }
  expect((await everythingStored(page)).text).toBe(before);
});

it('loads one of one’s own, and says so when it is here already', async () => {
  const { page } = phone;
  await load(page, 'own.json', OWN_TEXT);
  await page.getByText(say.loaded('Packs of our shed', 'shed-rack', '0.1.0')).waitFor();
  const line = page.locator('[data-part="checklists"] li', { hasText: 'Packs of our shed' });
  await line.getByText(say.sha256(sha256(OWN_TEXT))).waitFor();
  await line.getByText(`${say.origins.loaded} · ${say.uses(0)}`).waitFor();
  await load(page, 'own.json', OWN_TEXT);
  await page.getByText(say.isHere('Packs of our shed', 'shed-rack', '0.1.0')).waitFor();
});

it('a new pack begins with the usual one; another can be chosen until a question is answered', async () => {
  const { page } = phone;
  packId = await beginPack(page, { name: 'Heron 48', cellsInSeries: '16' });
  await page.getByText(say.shown(builtIn.title, builtIn.version)).waitFor();
  await chooseChecklist(page, 'Packs of our shed');
  await chooseChecklist(page, rack.title);
  const entries = (await storedEntries(page)).filter(({ key }) => key[0] === packId);
  expect(storedValue(entries, 'pack', 'checklist')).toEqual({
    id: 'lfp-rack',
    version: '0.1.0',
    sha256: sha256(RACK_TEXT),
  });
  expect(storedValue(entries, 'nameplate', 'name')).toBe('Heron 48');
  await answerRack(page, 'terminal-shrouds', 'failed');
  await goTo(page, `#/${packId}/nameplate`);
  await page.getByText(say.shown(rack.title, '0.1.0')).waitFor();
  expect(await button(page, say.change).count()).toBe(0);
});

it('Lid off shows its 7 zones as a plan, each a way in with how far it is', async () => {
  const { page } = phone;
  await answerRack(page, 'hand-disconnect', 'weak');
  await makeSafe(page, packId, roll.shot('covered.jpg'));
  const zones = page.locator('.cutaway [data-zone]');
  expect(await zones.evaluateAll((all) => all.map((one) => one.getAttribute('data-zone')))).toEqual(
    rack.zones.map(({ id }) => id),
  );
  expect(await page.locator('[data-zone="front-panel"]').getAttribute('aria-label')).toMatch(/^front panel, 2 of 3$/);
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 844 });
    expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 844 });
  await page.locator('[data-zone="bus-bars"]').tap();
  await expectTitle(page, 'Bus bars and leads');
});

it('its sheet and PDF name the findings, the remedies and that the checklist is a draft', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}`);
  await page.getByText(say.draftMark, { exact: true }).waitFor();
  await goTo(page, `#/${packId}/sheet`);
  await page.getByText(sheetWords.draftChecklist, { exact: true }).first().waitFor();
  const { text } = await readPdf((await savePdf(page, packId)).bytes.buffer);
  for (const said of ['draft checklist', 'Shrouds of the terminals', 'Switching off by hand', 'lfp-rack 0.1.0']) {
    expect(text).toContain(said);
  }
  expect(text).toContain('Put a shroud or boot over every power terminal');
});

it('a newer version loaded by hand is offered to a pack on the older one, and named a draft', async () => {
  const { page } = phone;
  await load(page, 'newer.json', RACK_TEXT.replace('"version": "0.1.0"', '"version": "0.2.0"'));
  await page.getByText(say.loaded(rack.title, 'lfp-rack', '0.2.0')).waitFor();
  await goTo(page, `#/${packId}`);
  await page.getByText(`${carryOverWords.onBoard('0.1.0', '0.2.0')} ${carryOverWords.isDraft}`).waitFor();
  await beginPack(page, { name: 'Shed 2' });
  await tapButton(page, say.change);
  await page.getByRole('dialog').getByRole('radio').nth(3).waitFor();
  const offered = (await page.getByRole('dialog').getByRole('radio').allTextContents()).map(
    (text) => text.split(' · ')[0],
  );
  expect(offered).toEqual([
    say.shown(builtIn.title, builtIn.version),
    say.shown(rack.title, '0.1.0'),
    say.shown(rack.title, '0.2.0'),
    say.shown('Packs of our shed', '0.1.0'),
  ]);
  await page.setViewportSize({ width: 320, height: 568 });
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
});

it('removing one in use is refused, naming the pack; without a use it is asked, and then gone', async () => {
  const { page } = phone;
  const ownPack = await beginPack(page, { name: 'Shed 1' });
  await chooseChecklist(page, 'Packs of our shed');
  const remove = say.of(say.remove, 'shed-rack', '0.1.0');
  const label = words.packLabel('Shed 1', '1');
  await goTo(page, '#/keep');
  await keepPart(page, 'checklists');
  const own = page.locator('[data-part="checklists"] li', { hasText: 'Packs of our shed' });
  await own.getByText(say.uses(1)).waitFor();
  await tapButton(page, remove);
  await page.getByText(say.inUse('shed-rack', '0.1.0', [label])).waitFor();
  expect((await everythingStored(page)).text).toContain('Packs of our shed');
  await goTo(page, `#/${ownPack}/item/terminal-shrouds`);
  await page.locator('[data-grade="weak"]').tap();
  await goTo(page, `#/${ownPack}`);
  await tapButton(page, packWords.putAway);
  await tapButton(page, packWords.putAwayNow);
  await expectTitle(page, benchWords.title);
  await goTo(page, '#/keep');
  await keepPart(page, 'checklists');
  await tapButton(page, remove);
  await page.getByText(say.inUse('shed-rack', '0.1.0', [label])).waitFor();
  await tapButton(page, keepWords.removeForGood);
  await page.getByRole('dialog').getByRole('button', { name: keepWords.removeForGood }).tap();
  await own.getByText(say.uses(0)).waitFor();
  await tapButton(page, remove);
  await page.getByRole('dialog').getByRole('button', { name: say.remove, exact: true }).tap();
  await page.getByText(say.removed('shed-rack', '0.1.0')).waitFor();
  expect(await own.count()).toBe(0);
  expect((await everythingStored(page)).text).not.toContain('Packs of our shed');
});

it('none of this asked anything of a stranger, and the console stayed clean', () => {
  expect(phone.complaints).toEqual([]);
});
