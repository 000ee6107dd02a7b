import { beforeAll, describe, expect, it } from 'vitest';
import { cardFromEntries } from '../../src/app/card-of.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import { hiddenPlaces } from '../../src/schema/plain-text.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import type { Store } from '../../src/storage/store.ts';
import { builtIn } from '../checklists/built-in.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import type { Phone } from '../storage/open-test-store.ts';
import { scriptsEverywhere } from './bundle-entries.ts';
import { CATALOGUE } from './catalogue.ts';
import { dumpOf } from './dump-of.ts';
import { type HandedIn, handInBundle, handInDefinition, handInLog, handInPicture } from './hand-in.ts';
import type { HostileFile } from './hostile-file.ts';
import { SCRIPTS } from './hostile-texts.ts';
import { OWN_PACK, phoneWithAPack, SOUND_PACK, soundBundle } from './sound-bench.ts';
import { printed, wholeWay } from './whole-way.ts';

/** No file may hold the phone up for longer. Our choice, with room for a busy machine. */
const MOST_MS = 5000;
let own: { phone: Phone; store: Store };
let before: string;

beforeAll(async () => {
  own = await phoneWithAPack();
  before = await dumpOf(own.phone);
});

it('holds more than 45 files made by hand, no two by one name, of all four kinds', () => {
  expect(new Set(CATALOGUE.map(({ kind, name }) => `${kind} ${name}`)).size).toBe(CATALOGUE.length);
  const countOf = (kind: HostileFile['kind']) => CATALOGUE.filter((file) => file.kind === kind).length;
  expect([
    countOf('bundle') >= 60,
    countOf('definition') >= 20,
    countOf('log') >= 15,
    countOf('picture') >= 12,
  ]).toEqual([true, true, true, true]);
});

it('takes the sound bundle from which the others are made, with nothing changed', async () => {
  const { refused, bundle } = await handInBundle(await soundBundle());
  expect(refused).toBeNull();
  expect(bundle?.textChanges).toEqual([]);
  expect(bundle?.packs.map(({ packId }) => packId)).toEqual([SOUND_PACK]);
  await printed(wholeWay(SOUND_PACK, bundle?.packs[0]?.entries ?? [], builtIn));
});

describe.each(['bundle', 'definition', 'log', 'picture'] as const)('a %s', (kind) => {
  const files = CATALOGUE.filter((file) => file.kind === kind);

  it.each(files.filter(({ expect: { is } }) => is === 'refused').map((file) => [file.name, file] as const))(
    'that is %s is refused with its reason, and the phone is as it was, byte for byte',
    async (_, file) => {
      const bytes = await file.bytes();
      const began = performance.now();
      const { refused } = await handIn(file, bytes);
      expect(performance.now() - began).toBeLessThan(MOST_MS);
      const reason = file.expect.is === 'refused' ? file.expect.reason : '';
      if (kind === 'definition') expect(refused).toContain(reason);
      else expect(refused).toBe(reason);
      expect(await dumpOf(own.phone)).toBe(before);
    },
  );

  it.each(files.filter(({ expect: { is } }) => is === 'taken').map((file) => [file.name, file] as const))(
    'that is %s is taken in as plain text, with what was changed',
    async (_, file) => {
      const bytes = await file.bytes();
      const began = performance.now();
      const handed = await handIn(file, bytes);
      expect(performance.now() - began).toBeLessThan(MOST_MS);
      expect(handed).toMatchObject({ refused: null, changed: file.expect.is === 'taken' ? file.expect.changed : [] });
      if (kind === 'bundle') await takenIn(bytes);
      if (kind === 'definition') graded(bytes);
    },
  );
});

it('prints scripts as the plain text they are: 12 of 12 stand in the PDF', async () => {
  const { bundle } = await handInBundle(await scriptsEverywhere());
  const { text } = await readPdf(await printed(wholeWay(SOUND_PACK, bundle?.packs[0]?.entries ?? [], builtIn)));
  const bare = (words: string) => words.replace(/\s/g, '');
  expect(SCRIPTS.filter((script) => !bare(text).includes(bare(script)))).toEqual([]);
});

function handIn({ kind }: HostileFile, bytes: Uint8Array<ArrayBuffer>): Promise<HandedIn> | HandedIn {
  if (kind === 'bundle') return handInBundle(bytes);
  if (kind === 'definition') return handInDefinition(bytes);
  return kind === 'log' ? handInLog(bytes) : handInPicture(bytes);
}

/** Restored beside a pack that is there already: that one stays as it was, the new one folds, grades and prints. */
async function takenIn(bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  const { store } = await phoneWithAPack();
  const { bundle } = await handInBundle(bytes);
  if (bundle === undefined) throw new Error('refused the second time');
  const ownBefore = await store.entriesOf(OWN_PACK);
  const report = await restoreBundle(store, bundle, {
    bringBackDeleted: false,
    cardOf: (entries) => cardFromEntries(entries[0]?.key[0] ?? '', entries, builtIn),
  });
  expect(report.stopped).toBeNull();
  expect(await store.entriesOf(OWN_PACK)).toEqual(ownBefore);
  const entries = await store.entriesOf(SOUND_PACK);
  expect(entries.length).toBeGreaterThan(100);
  expect(entries.flatMap(({ v, why }) => hiddenPlaces([v, why ?? '']))).toEqual([]);
  await printed(wholeWay(SOUND_PACK, entries, builtIn));
}

function graded(bytes: Uint8Array): void {
  const checked = checkDefinition(JSON.parse(new TextDecoder().decode(bytes)));
  if (!checked.ok) throw new Error('refused the second time');
  wholeWay(SOUND_PACK, [], checked.definition);
}
