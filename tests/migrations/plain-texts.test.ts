import { describe, expect, it } from 'vitest';
import { liftEntry } from '../../src/migrations/lift-entry.ts';
import { entriesText } from '../../src/record/sealed-entries.ts';
import { checkEntry } from '../../src/schema/check-entry.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import type { Store } from '../../src/storage/store.ts';
import { entry, PACK } from '../record/made-entries.ts';
import { bytesOf, cardFrom, forge, json, partsOf, read, readZip } from '../storage/bundle/bench-of-packs.ts';
import { layOut } from '../storage/earlier-versions.ts';
import { cardOf, newPhone, type Phone, storeOn } from '../storage/open-test-store.ts';

/** As version 2 kept what was pasted: an override, a byte order mark, a carriage return. */
const NOTE = 'lug \u202e53 mm\u00b2\r\n\ufeffloose';
const PLAIN = 'lug 53 mm\u00b2\nloose';
const pasted: Entry = { ...entry('nameplate', 'note', NOTE), why: 'read \u2066again\u2069' };
const hiding: Entry = entry('nameplate', 'maker', '\u202c');

/** DESIGN §9: the number of a database of schema 2 and its second layout. */
const VERSION_2 = 2002;

async function phoneOfVersion2(): Promise<Phone> {
  const phone = newPhone();
  const entries = [pasted, hiding].map((one) => [one.key, one] as const);
  await layOut(phone, VERSION_2, { entries, cards: [[PACK, cardOf(PACK)([])]] });
  return phone;
}

async function giveBackup(from: Store, to: Store) {
  const result = await read((await partsOf(from))[0]);
  if (!result.ok) throw new Error(result.detail);
  return restoreBundle(to, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
}

describe('texts that versions before 3 kept with hidden characters', () => {
  it('are lifted plain, under the stamp they had', () => {
    expect(liftEntry(pasted, 2)).toEqual({ ok: true, entry: { ...pasted, v: PLAIN, why: 'read again' } });
  });

  it('are never lifted to nothing, which the schema would set aside: U+FFFD stands for it', () => {
    const lift = liftEntry(hiding, 2);
    expect(lift).toEqual({ ok: true, entry: { ...hiding, v: '\ufffd' } });
    expect(checkEntry(lift.ok && lift.entry)).toMatchObject({ ok: true, known: true });
  });

  it('are the same on the phone that wrote them and on one that restored them: a closed sheet stays as sealed', async () => {
    const own = await storeOn(await phoneOfVersion2());
    const other = await storeOn(newPhone());
    await giveBackup(own, other);
    expect(await other.entriesOf(PACK)).toEqual(await own.entriesOf(PACK));
    expect(entriesText(await own.entriesOf(PACK))).toContain('lug 53 mm');
    const back = await giveBackup(other, own);
    expect(back.packs[0]).toMatchObject({ written: [], newerHere: [], deletedHere: [] });
  });

  it('are listed when a bundle of version 2 brings them, and refuse nothing', async () => {
    const store = await storeOn(await phoneOfVersion2());
    const old = await forge(await bytesOf((await partsOf(store))[0]), {
      files: (files) => {
        files[`entries/${PACK}.json`] = json([pasted, hiding]);
      },
      manifest: (manifest) => {
        manifest.schemaVersion = 2;
      },
    });
    const result = await readZip(old);
    if (!result.ok) throw new Error(result.detail);
    const { packs, textChanges } = result.bundle;
    expect(packs[0]?.entries.map(({ v }) => v)).toEqual([PLAIN, '\ufffd']);
    expect(textChanges.map(({ key, place, characters }) => [key[2], place, characters])).toEqual([
      ['note', '', ['U+202E', 'U+FEFF']],
      ['note', 'why', ['U+2066', 'U+2069']],
      ['maker', '', ['U+202C']],
    ]);
  });
});
