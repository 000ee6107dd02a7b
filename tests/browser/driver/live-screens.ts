import type { Page } from 'playwright-core';
import { cellCodeWords } from '../../../src/text/live-tests/cell-code.ts';
import { cellGridWords, cellsWords } from '../../../src/text/live-tests/cells.ts';
import { editingWords } from '../../../src/text/live-tests/editing.ts';
import { parallelWords } from '../../../src/text/live-tests/parallel.ts';
import { rulerStageWords, rulerWords } from '../../../src/text/live-tests/ruler.ts';
import { sensorWords } from '../../../src/text/live-tests/sensor.ts';
import { tripWords } from '../../../src/text/live-tests/trip.ts';
import { measuredWords } from '../../../src/text/measured.ts';
import { expectTitle, goTo, tapButton } from './screen.ts';
import type { PackInHand } from './screens.ts';

/** Lines of the Live tests, by the step that leads to each. */
export const LIVE_TEST_LINES = [
  'run',
  'log',
  'trip',
  'cut-off',
  'cells',
  'resistance',
  'lead',
  'ruler',
  'joint',
  'drain',
  'parallel',
  'read-out',
  'code',
  'instrument',
] as const;

/** Of these the first pack of the demo bench has some, with what they come to. */
const WITH_RESULTS = [
  'run',
  'trip',
  'cut-off',
  'cells',
  'resistance',
  'lead',
  'joint',
  'drain',
  'read-out',
  'instrument',
  'sensor',
] as const;

type NamedScreen = [name: string, go: (page: Page) => Promise<void>];

/** The screens of the live tests: the station, each kind empty and with results, logs, gates, and the items they grade. */
export function liveScreens(pack: PackInHand): NamedScreen[] {
  const { demoId } = pack;
  return [
    ['demo-live-tests', (page) => goTo(page, `#/${demoId}/live-tests`)],
    ...WITH_RESULTS.flatMap((kind): NamedScreen[] => [
      [`demo-${kind}-list`, (page) => listOf(page, demoId, kind)],
      [`demo-${kind}`, (page) => firstOf(page, demoId, kind)],
    ]),
    ['demo-logs', (page) => listOf(page, demoId, 'log')],
    [
      'demo-log',
      async (page) => {
        await firstOf(page, demoId, 'log');
        await page.locator('.sheet-plot svg').waitFor({ timeout: 20_000 });
      },
    ],
    ...beingTyped(pack),
    ...gatesAndItems(pack),
  ];
}

async function listOf(page: Page, packId: string, kind: string): Promise<void> {
  await goTo(page, `#/${packId}/live-test/${kind}`);
  await page.locator('.lines a.line').first().waitFor();
  await openWorkings(page);
}

async function firstOf(page: Page, packId: string, kind: string): Promise<void> {
  await listOf(page, packId, kind);
  const list = page.url();
  await page.locator('.lines a.line').first().tap();
  await page.waitForURL((url) => url.href !== list);
  await page.locator('h1').waitFor();
  await openWorkings(page);
}

/** How a result was worked out is folded away; what is folded is not looked at. */
async function openWorkings(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const working of document.querySelectorAll('details')) working.open = true;
  });
}

/** Screens of a pack whose first tests are being typed. */
function beingTyped({ packId, photoId }: PackInHand): NamedScreen[] {
  const at = (place: string) => (page: Page) => goTo(page, `#/${packId}${place}`);
  return [
    ['live-tests', at('/live-tests')],
    ['trips', at('/live-test/trip')],
    [
      'trip',
      async (page) => {
        await at('/live-test/trip')(page);
        await tapButton(page, editingWords.add(tripWords.one));
        await page.getByLabel(tripWords.labels.currentA, { exact: true }).fill('220');
        await page.getByLabel(tripWords.labels.currentA, { exact: true }).blur();
      },
    ],
    ['runs', at('/live-test/run')],
    ['logs', at('/live-test/log')],
    ['lead', at(`/live-test/lead/${'a'.repeat(32)}`)],
    ['cut-off', at(`/live-test/cut-off/${'a'.repeat(32)}`)],
    ['instrument', at(`/live-test/instrument/${'a'.repeat(32)}`)],
    [
      'cells',
      async (page) => {
        await at(`/live-test/cells/${'a'.repeat(32)}`)(page);
        await page.getByRole('radio', { name: cellsWords.states.nearFull, exact: true }).tap();
        for (const column of ['resistanceMohm', 'bmsVoltageV'] as const) {
          const turn = page.getByRole('button', { name: cellGridWords.column[column], exact: true });
          if ((await turn.getAttribute('aria-pressed')) === 'false') await turn.tap();
        }
        await page.getByLabel(cellGridWords.box(1, cellGridWords.column.voltageV), { exact: true }).fill('3460');
        await page.getByText(cellGridWords.offered(1, '3460'), { exact: true }).waitFor();
      },
    ],
    [
      'parallel',
      async (page) => {
        await at(`/live-test/parallel/${'a'.repeat(32)}`)(page);
        await page.getByRole('radio', { name: parallelWords.of.strings, exact: true }).tap();
        await page.getByRole('heading', { name: parallelWords.each }).waitFor();
      },
    ],
    [
      'cell-code',
      async (page) => {
        await at(`/live-test/code/${'a'.repeat(32)}`)(page);
        await page.getByLabel(cellCodeWords.labels.text, { exact: true }).fill('04QXB76836300JBC40000903');
        await page.getByText(cellCodeWords.wrongAt(4, 'X'), { exact: true }).waitFor();
      },
    ],
    ['cell-codes', at('/live-test/code')],
    ['photo-rulers', at('/live-test/ruler')],
    ['photo-ruler-photo', at(`/live-test/ruler/${'a'.repeat(32)}`)],
    [
      'photo-ruler',
      async (page) => {
        await at(`/photo/${photoId}`)(page);
        await tapButton(page, rulerWords.measure);
        await page.getByRole('region', { name: rulerStageWords.editor }).waitFor();
      },
    ],
  ];
}

/** The gate of hot and cold, and items that are measured or derived: open, with a figure, and against it. */
function gatesAndItems({ packId, demoId, liveId }: PackInHand): NamedScreen[] {
  return [
    ['sensor-early', (page) => goTo(page, `#/${packId}/live-test/sensor`)],
    [
      'sensor-gate',
      async (page) => {
        await goTo(page, `#/${liveId}/live-test/sensor`);
        await expectTitle(page, sensorWords.gateTitle);
        await page.getByRole('button', { name: sensorWords.gatePass }).tap({ force: true });
        await page.getByRole('alert').waitFor();
      },
    ],
    [
      'item-measured',
      async (page) => {
        await goTo(page, `#/${packId}/item/vent-headroom`);
        await page.getByRole('region', { name: measuredWords.title }).getByRole('textbox').fill('2000');
        await page.getByText(measuredWords.outOfReach(0, 1000), { exact: true }).waitFor();
      },
    ],
    ['item-derived-open', (page) => goTo(page, `#/${packId}/item/overcurrent-cutoff`)],
    ['item-derived', (page) => goTo(page, `#/${demoId}/item/overcurrent-cutoff`)],
    [
      'overrule',
      async (page) => {
        await goTo(page, '#/');
        await goTo(page, `#/${demoId}/item/overcurrent-cutoff`);
        await page.locator('[data-grade="sound"]').tap();
        await page.getByRole('dialog').waitFor();
      },
    ],
  ];
}
