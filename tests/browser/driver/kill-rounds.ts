import { createHash } from 'node:crypto';
import type { Answer } from '../../../src/schema/answer.ts';
import { GRADES, type Grade } from '../../../src/schema/grade.ts';
import { benchWords } from '../../../src/text/bench.ts';
import { photoWords } from '../../../src/text/photo-screens.ts';
import { words } from '../../../src/text/words.ts';
import { everythingStored, storedEntries, storedValue } from './database.ts';
import { beginPack, choose, savedAs } from './job.ts';
import { killerOf } from './kill.ts';
import { type Phone, phoneWithProfile } from './phone.ts';
import { photographItem } from './photo.ts';
import { expectTitle, goTo, tapButton } from './screen.ts';

const ITEMS = ['rating-label', 'terminal-posts', 'terminal-caps', 'handles', 'alarm-and-port'];
const NAME = 'Killed';

export interface KillPlan {
  /** Where the browser keeps its profile, from one round to the next. */
  folder: string;
  rounds: number;
  photoPaths: readonly string[];
  seed: number;
  /** Changes called saved before the end of a round, at most; every second round may end at a moment of its own instead. */
  mostCalls: number;
  someAtAnyMoment: boolean;
}

export interface KillsFound {
  tried: number;
  /** Times that the screen called something saved. */
  calls: number;
  /** Answers and photos that were looked for after each kill, over all rounds. */
  lookedFor: number;
  lostAnswers: string[];
  lostPhotos: string[];
  lostDatabases: number;
}

/**
 * Answers and photographs, and kills the browser with all its processes, round after round; then looks for everything
 * that the screen had called saved. A database that is gone is counted and a new pack begun.
 */
export async function killRounds(plan: KillPlan): Promise<KillsFound> {
  const { folder, rounds, photoPaths, seed, mostCalls, someAtAnyMoment } = plan;
  const random = seeded(seed);
  const found: KillsFound = { tried: 0, calls: 0, lookedFor: 0, lostAnswers: [], lostPhotos: [], lostDatabases: 0 };
  let promised = nothingPromised();
  let packId = '';
  let phone = await phoneWithProfile(folder);
  try {
    for (let round = 0; round < rounds; round += 1) {
      if (packId === '') packId = await beginPack(phone.page, { name: NAME });
      const kill = await killerOf(phone);
      let ending: Promise<void> | null = null;
      const end = () => {
        ending ??= kill();
      };
      const atAnyMoment = someAtAnyMoment && round % 2 === 0;
      let callsLeft = atAnyMoment ? Number.POSITIVE_INFINITY : 2 + Math.floor(random() * (mostCalls - 1));
      await listen(phone, promised, () => {
        found.calls += 1;
        callsLeft -= 1;
        if (callsLeft <= 0) end();
      });
      const timer = setTimeout(end, atAnyMoment ? 300 + random() * 2500 : 8000);
      await workUntilKilled(phone, { packId, promised, photoPaths, random }).catch((error: unknown) => {
        if (ending === null) throw error;
      });
      clearTimeout(timer);
      await ending;
      found.tried += 1;
      phone = await phoneWithProfile(folder);
      if (await lookFor(phone, { packId, promised, found })) continue;
      promised = nothingPromised();
      packId = '';
    }
    return found;
  } finally {
    await phone.context.close();
  }
}

/** What the screen has called saved, and answers tapped since: those may be there as well, called saved or not. */
interface Promised {
  answers: Map<string, Grade>;
  tappedSince: Map<string, Grade[]>;
  photoLinks: Set<string>;
}

function nothingPromised(): Promised {
  return { answers: new Map(), tappedSince: new Map(), photoLinks: new Set() };
}

/** Follows what the screen says from inside the page, so that no call is missed for the time it takes to ask. */
async function listen({ context, page }: Phone, promised: Promised, onCall: () => void): Promise<void> {
  await context.exposeBinding('calledSaved', (_, hash: string, label: string) => {
    const photo = /\/photo\/([0-9a-f]{64})\/([a-z-]+)$/.exec(decodeURIComponent(hash));
    if (photo) promised.photoLinks.add(`${photo[1]}/${photo[2]}`);
    for (const itemId of ITEMS) {
      const grade = GRADES.find((one) => label === savedAs(itemId, one));
      if (grade === undefined) continue;
      promised.answers.set(itemId, grade);
      promised.tappedSince.set(itemId, []);
    }
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

interface Work {
  packId: string;
  promised: Promised;
  photoPaths: readonly string[];
  random: () => number;
}

/** Answers and photographs until the page is gone. */
async function workUntilKilled({ page }: Phone, { packId, promised, photoPaths, random }: Work): Promise<never> {
  const any = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)] as T;
  for (;;) {
    const itemId = any(ITEMS);
    await goTo(page, `#/${packId}/item/${itemId}`);
    const chosen = await page.locator('[data-grade][aria-checked="true"]').all();
    const now = await chosen[0]?.getAttribute('data-grade');
    const grade = any(GRADES.filter((one) => one !== now));
    promised.tappedSince.set(itemId, [...(promised.tappedSince.get(itemId) ?? []), grade]);
    await choose(page, grade, itemId);
    if (random() < 0.35) await photographItem(page, any(photoPaths));
  }
}

interface Search {
  packId: string;
  promised: Promised;
  found: KillsFound;
}

/** Counts what is missing. False if the whole database is gone. */
async function lookFor({ page }: Phone, { packId, promised, found }: Search): Promise<boolean> {
  const entries = await storedEntries(page);
  if (!entries.some(({ key }) => key[0] === packId)) {
    found.lostDatabases += 1;
    return false;
  }
  await goTo(page, '#/');
  await expectTitle(page, benchWords.title);
  await page.getByText(words.packLabel(NAME, '1')).first().waitFor();
  for (const [itemId, grade] of promised.answers) {
    const stored = storedValue(entries, 'answer', itemId) as Answer | undefined;
    const allowed = [grade, ...(promised.tappedSince.get(itemId) ?? [])];
    if (stored?.kind !== 'grade' || !allowed.includes(stored.grade)) {
      found.lostAnswers.push(`${itemId}: ${grade} was called saved, ${JSON.stringify(stored)} is there`);
    }
  }
  const { bytes } = await everythingStored(page);
  const photos = new Map(
    bytes.filter(({ store }) => store === 'photos').map((one) => [JSON.parse(one.key) as string, one.bytes]),
  );
  for (const linkId of promised.photoLinks) {
    const photoId = linkId.slice(0, 64);
    const isLinked = storedValue(entries, 'photoItem', linkId) === true;
    const isKnown = storedValue(entries, 'photo', photoId) !== undefined;
    const hash = createHash('sha256').update(photos.get(photoId) ?? '').digest('hex'); // biome-ignore format: one line
    if (!isLinked || !isKnown || hash !== photoId) found.lostPhotos.push(linkId);
  }
  found.lookedFor += promised.answers.size + promised.photoLinks.size;
  return true;
}

/** Park and Miller's minimal generator. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
