import { Ajv2020 } from 'ajv/dist/2020.js';
import { strFromU8, unzipSync } from 'fflate';
import papa from 'papaparse';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FindingsFile } from '../../src/schema/findings-file.ts';
import type { AnnotationPage } from '../../src/sheet/exports/annotations.ts';
import { jpegSize } from '../../src/sheet/pdf/jpeg-size.ts';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { letterWords } from '../../src/text/letter.ts';
import { publishWords as say } from '../../src/text/publish.ts';
import { sheetScreenWords } from '../../src/text/sheet-screen.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { packIdOn } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { loseSignal } from './driver/offline.ts';
import { appUrl, emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { saved } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
let packId: string;
let findings: FindingsFile;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await tapButton(phone.page, benchWords.demoIn);
  await button(phone.page, benchWords.demoOut).waitFor();
  await phone.page.locator('.bench-card').first().tap();
  await phone.page.locator('.line').first().waitFor();
  packId = packIdOn(phone.page);
  await loseSignal(phone);
});
afterAll(() => browser.close());

const textOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

it('is reached from the pack, says the disclosure that will stand on all of it, and leads to five places', async () => {
  const { page } = phone;
  await page.getByRole('link', { name: packWords.furtherTitles.publish }).tap();
  await expectTitle(page, say.title);
  await page.getByText('Invented demo: no such pack exists.', { exact: false }).waitFor();
  await page.getByText(say.notClosed, { exact: true }).waitFor();
  for (const place of ['card', 'sheet', 'owner', 'letter', 'shoot-clock']) {
    expect(await page.locator(`a.line[href="#/${packId}/${place}"]`).count(), place).toBe(1);
  }
  await page.getByRole('heading', { name: say.reporting.title }).waitFor();
});

describe('files, made without a signal and read back by other programs', () => {
  it('JSON: no fault by the schema that the app serves', async () => {
    const { page } = phone;
    const file = await saved(page, say.json.label);
    expect(file.name).toMatch(/^underlid-.*-findings\.json$/);
    findings = JSON.parse(textOf(file.bytes));
    const schema = await page.evaluate(async (url) => (await fetch(url)).json(), appUrl(findings.$schema));
    const validate = new Ajv2020({ strict: true, allErrors: true }).compile(schema);
    expect(validate(findings) ? [] : validate.errors).toEqual([]);
    expect(findings.findings.length).toBeGreaterThan(3);
  });

  it('CSV: a row for every finding of the JSON, with the very same points', async () => {
    const file = await saved(phone.page, say.csv.label);
    const [header = [], ...rows] = papa.parse(textOf(file.bytes), { header: false, skipEmptyLines: true }).data;
    const points = header.indexOf('Points of Build lost');
    const itemId = header.indexOf('Item id');
    expect(rows.map((row) => [row[itemId], Number(row[points])])).toEqual(
      findings.findings.map((finding) => [finding.itemId, finding.lostPoints]),
    );
  });

  it('zip: every photo of the JSON in its size, and every selector is one that a browser can read', async () => {
    const { page } = phone;
    const files = unzipSync((await saved(page, say.photos.label)).bytes);
    const { 'annotations.jsonld': written = new Uint8Array(), ...photos } = files;
    expect(Object.keys(photos)).toHaveLength(findings.photos.length);
    const sizes = Object.values(photos).map((bytes) => jpegSize(bytes));
    expect(sizes.map((size) => [size?.widthPx, size?.heightPx])).toEqual(
      findings.photos.map(({ widthPx, heightPx }) => [widthPx, heightPx]),
    );
    const annotations = JSON.parse(strFromU8(written)) as AnnotationPage;
    expect(annotations.items).toHaveLength(findings.photos.flatMap(({ callouts }) => callouts).length);
    for (const { target } of annotations.items) expect(Object.keys(files)).toContain(target.source);
    const svgs = annotations.items.flatMap(({ target: { selector } }) =>
      selector.type === 'SvgSelector' ? [selector.value] : [],
    );
    expect(svgs.length).toBeGreaterThan(0);
    const roots = await page.evaluate(
      (texts) =>
        texts.map((text) => {
          const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
          return `${root.namespaceURI} ${root.tagName} ${root.querySelectorAll('path[d]').length}`;
        }),
      svgs,
    );
    expect(new Set(roots)).toEqual(new Set(['http://www.w3.org/2000/svg svg 1']));
  });
});

it('the letter is 1 page, the same words as the text to copy', async () => {
  const { page } = phone;
  await page.locator(`a.line[href="#/${packId}/letter"]`).tap();
  await expectTitle(page, letterWords.screen.title);
  const plain = await page.locator('#text-to-copy').inputValue();
  expect(plain).toContain(letterWords.reply);
  await tapButton(page, sheetScreenWords.pdf(sheetScreenWords.papers.a4));
  const file = await saved(page, sheetScreenWords.save);
  const { pages } = await readPdf(file.bytes.buffer);
  expect(pages).toHaveLength(1);
  expect(pages[0]?.text).toContain(letterWords.reply.replace(/\s+/g, ' '));
  const asText = await saved(page, letterWords.screen.textFile);
  expect(textOf(asText.bytes)).toBe(plain);
});

it.each(['publish', 'letter'])('%s has no fault at 320 px', async (place) => {
  const { page } = phone;
  await page.setViewportSize({ width: 320, height: 568 });
  await goTo(page, `#/${packId}/${place}`);
  await page.locator('h2').first().waitFor();
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
});

it('asks nobody else and complains of nothing', () => {
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});
