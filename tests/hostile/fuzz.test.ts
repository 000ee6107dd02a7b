import { beforeAll, describe, expect, it } from 'vitest';
import { cardFromEntries } from '../../src/app/card-of.ts';
import type { VerifiedPart } from '../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import type { Store } from '../../src/storage/store.ts';
import { builtIn } from '../checklists/built-in.ts';
import { minimalDefinition } from '../schema/minimal-definition.ts';
import type { Phone } from '../storage/open-test-store.ts';
import { BYTE_CHANGES } from './change-bytes.ts';
import { changedJson } from './change-json.ts';
import { type Dice, dice } from './dice.ts';
import { dumpOf } from './dump-of.ts';
import { type HandedIn, handInBundle, handInDefinition, handInLog } from './hand-in.ts';
import { utf8 } from './hostile-file.ts';
import { DEFINITION_TEXT, OWN_PACK, phoneWithAPack, SOUND_PACK, soundBundle, soundEntries } from './sound-bench.ts';
import { BUNDLE_CHANGES } from './throw-bundle.ts';
import { LOG_CHANGES, SOUND_LOGS } from './throw-log.ts';
import { wholeWay } from './whole-way.ts';

type Bytes = Uint8Array<ArrayBuffer>;

const SEED = 20_261_125;
const MOST_MS = 2000;
/** Every so many refusals the whole phone is looked at, and at the end; as often a taken bundle goes the whole way in. */
const EVERY = 25;
const ENTRIES = soundEntries();

let own: { phone: Phone; store: Store };
let before: string;
let sound: Bytes;

beforeAll(async () => {
  own = await phoneWithAPack();
  before = await dumpOf(own.phone);
  sound = await soundBundle();
});

interface Thrown {
  count: number;
  /** Keeps kinds apart: the same place in another kind is another file. */
  offset: number;
  make(rolls: Dice): { how: string; bytes: Bytes };
  handIn(bytes: Bytes): Promise<HandedIn> | HandedIn;
  /** What was taken in must be fit to work with. */
  goOn?(nthTaken: number): Promise<void> | void;
}

/** Throws `count` files; each is refused by a name or taken in, in time. How many of each. */
async function throwAll({ count, offset, make, handIn, goOn }: Thrown): Promise<Map<string, number>> {
  const tally = new Map<string, number>();
  for (let number = 0; number < count; number += 1) {
    const { how, bytes } = make(dice(SEED + offset + number));
    const name = `seed ${SEED}, file ${offset + number}, by ${how}`;
    const began = performance.now();
    const handed = await orFail(name, () => handIn(bytes));
    expect(performance.now() - began, `${name} took too long`).toBeLessThan(MOST_MS);
    const end = handed.refused ?? 'taken';
    const nth = (tally.get(end) ?? 0) + 1;
    tally.set(end, nth);
    if (end === 'taken') await orFail(name, async () => goOn?.(nth));
    else if (nth % EVERY === 0) expect(await dumpOf(own.phone), name).toBe(before);
  }
  expect(await dumpOf(own.phone)).toBe(before);
  return tally;
}

async function orFail<T>(name: string, act: () => Promise<T> | T): Promise<T> {
  try {
    return await act();
  } catch (error) {
    throw new Error(`${name}: ${error instanceof Error ? error.stack : String(error)}`);
  }
}

function pick<T>(rolls: Dice, ways: Readonly<Record<string, T>>): [how: string, way: T] {
  return rolls.of(Object.entries(ways));
}

const sumOf = (tally: ReadonlyMap<string, number>) => [...tally.values()].reduce((sum, count) => sum + count, 0);

// A quiet machine takes 40 s for all; a busy one several times that.
describe('2000 files thrown at the readers', { timeout: 240_000 }, () => {
  it('900 bundles: each is refused by one of 15 names or more, or taken in; 150 or more are', async () => {
    let inHand: VerifiedPart | undefined;
    const tally = await throwAll({
      count: 900,
      offset: 0,
      make: (rolls) => {
        const [how, way] = pick(rolls, BUNDLE_CHANGES);
        return { how, bytes: way(sound, rolls) };
      },
      handIn: async (bytes) => {
        const { bundle, ...handed } = await handInBundle(bytes);
        inHand = bundle;
        return handed;
      },
      goOn: async (nth) => {
        const bundle = inHand;
        for (const { packId, entries } of bundle?.packs ?? []) wholeWay(packId, entries, builtIn, ['imperial']);
        if (bundle === undefined || nth % EVERY !== 0) return;
        const { store } = await phoneWithAPack();
        const ownBefore = await store.entriesOf(OWN_PACK);
        const { stopped } = await restoreBundle(store, bundle, {
          bringBackDeleted: false,
          cardOf: (entries) => cardFromEntries(entries[0]?.key[0] ?? '', entries, builtIn),
        });
        expect(stopped).toBeNull();
        expect(await store.entriesOf(OWN_PACK)).toEqual(ownBefore);
      },
    });
    expect(sumOf(tally)).toBe(900);
    expect(tally.get('taken')).toBeGreaterThanOrEqual(150);
    expect([...tally.keys()]).toEqual(
      expect.arrayContaining([
        ...['notAZip', 'damagedZip', 'encrypted', 'unsafePath', 'badManifest', 'missingFile', 'unlistedFile'],
        ...['checksum', 'badJson', 'badEntry', 'duplicateEntry', 'notAPhoto', 'badDefinition', 'notABundle', 'newer'],
      ]),
    );
  });

  it('500 definitions: each is refused with its place, or taken in and grades; 50 or more are', async () => {
    const texts = [JSON.stringify(minimalDefinition()), JSON.stringify(minimalDefinition()), DEFINITION_TEXT];
    const tally = await throwAll({
      count: 500,
      offset: 1_000_000,
      make: (rolls) => {
        const text = rolls.of(texts);
        if (rolls.chance(0.7))
          return { how: 'values', bytes: utf8(JSON.stringify(changedJson(JSON.parse(text), rolls)) ?? '') };
        const [how, way] = pick(rolls, BYTE_CHANGES);
        return { how, bytes: way(utf8(text), rolls) };
      },
      handIn: (bytes) => {
        const { refused, definition } = handInDefinition(bytes);
        if (definition !== undefined) wholeWay(SOUND_PACK, ENTRIES, definition, ['metric']);
        return refused === null
          ? { refused, changed: [] }
          : {
              refused:
                refused
                  .trim()
                  .split(' ')[0]
                  ?.replace(/\[\d+\]/g, '') ?? '',
            };
      },
    });
    expect(sumOf(tally)).toBe(500);
    expect(tally.get('taken')).toBeGreaterThanOrEqual(50);
    expect([...tally.keys()].every((place) => place !== '')).toBe(true);
    expect([...tally.keys()].length).toBeGreaterThanOrEqual(20);
  });

  it('600 logs: each is refused by one of 4 names or more, or read, cut into runs and kept; 300 or more are', async () => {
    const tally = await throwAll({
      count: 600,
      offset: 2_000_000,
      make: (rolls) => {
        const [how, way] = pick(rolls, LOG_CHANGES);
        return { how, bytes: way(rolls.of(SOUND_LOGS), rolls) };
      },
      handIn: handInLog,
    });
    expect(sumOf(tally)).toBe(600);
    expect(tally.get('taken')).toBeGreaterThanOrEqual(300);
    expect([...tally.keys()]).toEqual(expect.arrayContaining(['noTime', 'noNumbers', 'noVoltageOrCurrent', 'binary']));
  });
});
