import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import type { Answer } from '../../src/schema/answer.ts';
import { GRADES, type Grade } from '../../src/schema/grade.ts';
import { benchWords } from '../../src/text/bench.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries, storedValue } from './driver/database.ts';
import { beginPack, choose, savedAs } from './driver/job.ts';
import { killerOf } from './driver/kill.ts';
import { type Phone, phoneWithProfile } from './driver/phone.ts';
import { photographItem } from './driver/photo.ts';
import { goTo, tapButton } from './driver/screen.ts';

const ROUNDS = 10;
const ITEMS = ['rating-label', 'terminal-posts', 'terminal-caps', 'handles', 'alarm-and-port'];

const roll = cameraRoll();
const shots = ([1, 2, 3, 4, 5, 6, 7, 8] as const).map((orientation) =>
  roll.shot(`${orientation}.jpg`, { orientation }),
);
const folder = mkdtempSync(join(tmpdir(), 'underlid-killed-'));
let phone: Phone | null = null;
afterAll(async () => {
  await phone?.context.close();
  rmSync(folder, { recursive: true, maxRetries: 5 });
});

/** What the screen has called saved, and answers tapped since: those may be there as well, called saved or not. */
const promised = { answers: new Map<string, Grade>(), photoLinks: new Set<string>() };
const tappedSince = new Map<string, Grade[]>();
let calls = 0;

/** Follows what the screen says from inside the page, so that no call is missed for the time it takes to ask. */
async function listen({ context, page }: Phone, onCall: () => void) {
  await context.exposeBinding('calledSaved', (_, hash: string, label: string) => {
    const photo = /\/photo\/([0-9a-f]{64})\/([a-z-]+)$/.exec(decodeURIComponent(hash));
    if (photo) promised.photoLinks.add(`${photo[1]}/${photo[2]}`);
    for (const itemId of ITEMS) {
      const grade = GRADES.find((one) => label === savedAs(itemId, one));
      if (grade === undefined) continue;
      promised.answers.set(itemId, grade);
      tappedSince.set(itemId, []);
    }
    calls += 1;
    onCall();
  });
  await context.addInitScript((mark) => {
    let last = '';
    const look = () => {
      const said = document.querySelector('.saved[role="status"]')?.textContent;
      const label = document.querySelector('.saved-what')?.textContent ?? '';
      const now = `${said} ${label} ${location.hash}`;
      if (said === mark && now !== last) void Reflect.get(globalThis, 'calledSaved')(location.hash, label);
      last = now;
    };
    new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
  }, `✓ ${words.saved}`);
  await page.reload();
  await page.locator('h1').waitFor();
  // The camera may have been open when the browser was killed; that is said first.
  const dropped = page.getByRole('dialog', { name: photoWords.droppedTitle });
  if ((await dropped.count()) > 0) await tapButton(page, photoWords.dismiss);
}

/** Answers and photographs until the page is gone. */
async function workUntilKilled({ page }: Phone, packId: string, random: () => number) {
  const any = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)] as T;
  for (;;) {
    const itemId = any(ITEMS);
    await goTo(page, `#/${packId}/item/${itemId}`);
    const chosen = await page.locator('[data-grade][aria-checked="true"]').all();
    const now = await chosen[0]?.getAttribute('data-grade');
    const grade = any(GRADES.filter((one) => one !== now));
    tappedSince.set(itemId, [...(tappedSince.get(itemId) ?? []), grade]);
    await choose(page, grade, itemId);
    if (random() < 0.35) await photographItem(page, any(shots));
  }
}

/** The end of what is said when the records are gone, which is the same on every day. */
const GONE = benchWords.vanished(1, '|').split('|')[1] ?? '';

async function expectEverythingPromised({ page }: Phone) {
  const entries = await storedEntries(page);
  for (const [itemId, grade] of promised.answers) {
    const stored = storedValue(entries, 'answer', itemId) as Answer | undefined;
    const allowed = [grade, ...(tappedSince.get(itemId) ?? [])];
    expect(allowed, `${builtInItem(itemId).title} was called saved`).toContain(
      stored?.kind === 'grade' ? stored.grade : null,
    );
  }
  const { bytes } = await everythingStored(page);
  const photos = new Map(
    bytes.filter(({ store }) => store === 'photos').map((one) => [JSON.parse(one.key) as string, one.bytes]),
  );
  for (const linkId of promised.photoLinks) {
    const photoId = linkId.slice(0, 64);
    expect(storedValue(entries, 'photoItem', linkId), `photo at its item: ${linkId}`).toBe(true);
    expect(storedValue(entries, 'photo', photoId)).toBeDefined();
    expect(
      createHash('sha256')
        .update(photos.get(photoId) ?? '')
        .digest('hex'),
    ).toBe(photoId);
  }
  await goTo(page, '#/');
  await page.getByText(words.packLabel('Killed', '1')).waitFor();
  expect(await page.getByText(GONE).count()).toBe(0);
}

it('ten times killed with all its processes, the browser has every answer and photo that was called saved', async () => {
  const random = seeded(20_261_124);
  let packId = '';
  for (let round = 0; round < ROUNDS; round += 1) {
    phone = await phoneWithProfile(folder);
    if (round === 0) packId = await beginPack(phone.page, { name: 'Killed' });
    else await expectEverythingPromised(phone);
    const kill = await killerOf(phone);
    // Half of the rounds end at a moment of their own, half at the very call that something is saved.
    const callsLeft = round % 2 === 0 ? Number.POSITIVE_INFINITY : calls + 2 + Math.floor(random() * 8);
    let ending: Promise<void> | null = null;
    const end = () => {
      ending ??= kill();
    };
    await listen(phone, () => {
      if (calls >= callsLeft) end();
    });
    setTimeout(end, callsLeft === Number.POSITIVE_INFINITY ? 300 + random() * 2500 : 8000);
    await workUntilKilled(phone, packId, random).catch((error: unknown) => {
      if (ending === null) throw error;
    });
    await ending;
  }
  phone = await phoneWithProfile(folder);
  await expectEverythingPromised(phone);
  expect(promised.answers.size).toBe(ITEMS.length);
  expect(promised.photoLinks.size).toBeGreaterThan(3);
}, 180_000);

/** Park and Miller's minimal generator. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
