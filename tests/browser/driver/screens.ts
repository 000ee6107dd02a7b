import type { Page } from 'playwright-core';
import { benchWords } from '../../../src/text/bench.ts';
import { calloutWords } from '../../../src/text/callouts.ts';
import { itemWords } from '../../../src/text/item.ts';
import { keepWords } from '../../../src/text/keep.ts';
import { makeSafeWords } from '../../../src/text/make-safe.ts';
import { photoWords } from '../../../src/text/photo-screens.ts';
import { retestWords } from '../../../src/text/retest.ts';
import { smokeWords } from '../../../src/text/smoke.ts';
import { builtInItem } from '../../checklists/built-in.ts';
import type { cameraRoll } from './camera-roll.ts';
import { drawByTouch, writeOnCallout } from './draw.ts';
import { answer, beginPack, goLive, makeSafe, packIdOn, writeNote } from './job.ts';
import { liveScreens } from './live-screens.ts';
import { leaveCallouts, photographItem } from './photo.ts';
import { button, goTo, keepPart, tapButton } from './screen.ts';

/** A pack in the middle of the job: the lid is off, some things are found. */
export interface PackInHand {
  packId: string;
  photoId: string;
  /** A second pack, at which a stop item failed. */
  stoppedId: string;
  /** A third one, live and open. */
  liveId: string;
  /** One of the demo bench. */
  demoId: string;
}

export async function packInHand(page: Page, roll: ReturnType<typeof cameraRoll>): Promise<PackInHand> {
  await goTo(page, '#/');
  await tapButton(page, benchWords.demoIn);
  await button(page, benchWords.demoOut).waitFor();
  await page.locator('.bench-card').first().tap();
  await page.locator('.line').first().waitFor();
  const demoId = packIdOn(page);
  const stoppedId = await beginPack(page, { name: 'Dented one, bought used from a seller with a long name' });
  await goTo(page, `#/${stoppedId}/item/case-damage`);
  await page.locator('[data-grade="failed"]').tap();
  await page.getByRole('dialog').waitFor();
  const liveId = await beginPack(page, { name: 'Live and open' });
  await makeSafe(page, liveId, roll.shot('covered-live.jpg', { orientation: 3 }));
  await goLive(page, liveId);
  const packId = await beginPack(page, {
    name: 'Grebe 24',
    nominalVoltageV: '25.6',
    ratedCapacityAh: '100',
    ratedEnergyWh: '5000',
    cellsInSeries: '8',
    price: '399',
    currency: 'EUR',
  });
  await makeSafe(page, packId, roll.shot('covered.jpg'));
  await answer(page, { packId, itemId: 'main-lugs' }, 'failed');
  await answer(page, { packId, itemId: 'cell-vents' }, 'weak');
  await writeNote(page, 'cell-vents', 'One strip of tape over one vent.');
  const photoId = await photographItem(page, roll.shot('vents.jpg', { orientation: 6 }));
  await drawByTouch(page, 'leader', [
    [0.4, 0.4],
    [0.5, 0.5],
  ]);
  await writeOnCallout(page, 'leader', 'tape over the vent');
  await leaveCallouts(page);
  await page.waitForURL(/\/item\//);
  return { packId, photoId, stoppedId, liveId, demoId };
}

/** What is done with a record beside the way through the pack: looked at in a pack of the demo bench, which has it all. */
const FURTHER = ['remedies', 'owner', 'publish', 'card', 'letter', 'prices', 'shoot-clock', 'second-reader'];

/** Every screen of the app, and what is laid over screens, by name with the way there. */
export function everyScreen(pack: PackInHand): [name: string, go: (page: Page) => Promise<void>][] {
  const { packId, photoId, stoppedId, demoId } = pack;
  const at = (place: string) => (page: Page) => goTo(page, `#/${packId}${place}`);
  const over =
    (place: string, ...taps: string[]) =>
    async (page: Page) => {
      // From elsewhere: the same address again would leave the last dialog open.
      await goTo(page, '#/');
      await at(place)(page);
      for (const name of taps) await tapButton(page, name);
      await page.getByRole('dialog').waitFor();
    };
  return [
    ['bench', (page) => goTo(page, '#/')],
    ['keep', (page) => goTo(page, '#/keep')],
    [
      'keep-unfolded',
      async (page) => {
        await goTo(page, '#/keep');
        for (const part of ['look', 'recheck', 'checklists', 'about']) await keepPart(page, part);
      },
    ],
    ['regrade', (page) => goTo(page, '#/keep/regrade')],
    ['lost', (page) => goTo(page, '#/nowhere')],
    ['pack', at('')],
    ['nameplate', at('/nameplate')],
    ['arrival', at('/arrival')],
    ['item', at('/item/terminal-posts')],
    ['item-answered', at('/item/cell-vents')],
    ['fact', at('/fact/metal-case')],
    ['make-safe-passed', at('/make-safe')],
    [
      'make-safe',
      async (page) => {
        await at('/make-safe')(page);
        await tapButton(page, makeSafeWords.again);
      },
    ],
    ['lid-off', at('/lid-off')],
    ['zone', at('/zone/vents')],
    ['before', at('/before')],
    ['photos', at('/photos')],
    ['photo', at(`/photo/${photoId}`)],
    [
      'callouts',
      async (page) => {
        await goTo(page, `#/${packId}/photos`);
        await page.goto(page.url().replace('/photos', `/photo/${photoId}%2Fnew`));
        await page.getByRole('region', { name: calloutWords.editor }).waitFor();
      },
    ],
    [
      'sheet',
      async (page) => {
        await at('/sheet')(page);
        await page.getByRole('article').waitFor();
      },
    ],
    ['demo-pack', (page) => goTo(page, `#/${demoId}`)],
    [
      'demo-sheet',
      async (page) => {
        await goTo(page, `#/${demoId}/sheet`);
        await page.getByRole('article').waitFor();
      },
    ],
    ['afterwards', at('/afterwards')],
    ['smoke', over('/item/cell-vents', smokeWords.button)],
    ['photo-tray', over('/item/cell-vents', itemWords.photo)],
    ['retest', over('', retestWords.button)],
    ['note', over('/item/cell-vents', itemWords.noteFull)],
    ['not-seen', over('/item/cell-vents', itemWords.notSeen)],
    ['why', over('/item/cell-vents', itemWords.whyItMatters)],
    ['remove-photo', over(`/photo/${photoId}`, photoWords.remove)],
    ...liveScreens(pack),
    ...FURTHER.map((place): [string, (page: Page) => Promise<void>] => [
      `demo-${place}`,
      async (page) => {
        await goTo(page, `#/${demoId}/${place}`);
        await page.locator('main > :nth-child(2)').waitFor();
      },
    ]),
    ['remedies', at('/remedies')],
    ['publish-stopped', (page) => goTo(page, `#/${stoppedId}/publish`)],
    ['remedies-stopped', (page) => goTo(page, `#/${stoppedId}/remedies`)],
    ['tray', (page) => goTo(page, '#/tray')],
    [
      'side-by-side',
      async (page) => {
        await goTo(page, '#/side-by-side');
        await page.getByRole('article').waitFor();
      },
    ],
    ['stopped', (page) => goTo(page, `#/${stoppedId}/make-safe`)],
    ['stopped-item', (page) => goTo(page, `#/${stoppedId}/item/${builtInItem('case-damage').id}`)],
  ];
}

export type Theme = keyof typeof keepWords.themes;

export async function chooseTheme(page: Page, theme: Theme): Promise<void> {
  await goTo(page, '#/keep');
  await (await keepPart(page, 'look')).getByRole('radio', { name: keepWords.themes[theme] }).tap();
}
