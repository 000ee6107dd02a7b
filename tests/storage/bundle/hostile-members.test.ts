import type { Unzipped } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { canonicalJson } from '../../../src/record/canonical-json.ts';
import type { BundleRefusal } from '../../../src/schema/bundle.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import { entry, PACK } from '../../record/made-entries.ts';
import { newPhone, storeOn } from '../open-test-store.ts';
import {
  benchOfPacks,
  bytesOf,
  cardFrom,
  type Forgery,
  forge,
  jpegBytes,
  json,
  partsOf,
  readZip,
} from './bench-of-packs.ts';

// Forged by someone who knows the format: sizes and checksums are right, what is inside is not.

let sound: Uint8Array<ArrayBuffer>;
const entriesFile = `entries/${PACK}.json`;
const text = (words: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(words);

beforeAll(async () => {
  sound = await bytesOf((await partsOf(await benchOfPacks()))[0]);
});

async function outcomeOf(forgery: Forgery): Promise<[BundleRefusal | 'accepted', string]> {
  const result = await readZip(await forge(sound, forgery));
  return result.ok ? ['accepted', ''] : [result.refusal, result.detail];
}

const withEntries = (edit: (entries: Entry[]) => void): Forgery => ({
  files: (files) => {
    const entries = JSON.parse(new TextDecoder().decode(files[entriesFile])) as Entry[];
    edit(entries);
    files[entriesFile] = json(entries);
  },
});

/** Another picture in place of a photo, under its own right name, in the entries as well. */
async function withPicture(bytes: Uint8Array<ArrayBuffer>, shelf: 'photos' | 'originals' = 'photos'): Promise<Forgery> {
  const sha256 = await sha256Of(bytes);
  return {
    files: (files) => {
      const path = Object.keys(files).find((name) => name.startsWith(`${shelf}/`)) ?? '';
      const [, before = ''] = /([0-9a-f]{64})/.exec(path) ?? [];
      delete files[path];
      for (const [name, content] of Object.entries(files)) {
        if (name.startsWith('thumbs/')) rename(files, name, name.replace(before, sha256));
        if (name.startsWith('entries/')) {
          files[name] = text(new TextDecoder().decode(content).replaceAll(before, sha256));
        }
      }
      files[`${shelf}/${sha256}.jpg`] = bytes;
    },
  };
}

function rename(files: Unzipped, from: string, to: string): void {
  const content = files[from];
  if (from === to || content === undefined) return;
  delete files[from];
  files[to] = content;
}

describe('pictures', () => {
  const size = (widthPx: number, heightPx: number) => new Uint8Array(jpegBytes(900, 77, { widthPx, heightPx }));
  it.each<[BundleRefusal | 'accepted', string, Uint8Array<ArrayBuffer>, 'photos' | 'originals']>([
    ['accepted', 'another picture of the same size', size(2048, 1536), 'photos'],
    ['otherPicture', 'one pixel wider than its entry says', size(2049, 1536), 'photos'],
    ['otherPicture', 'turned', size(1536, 2048), 'photos'],
    ['hugePicture', '30 000 × 30 000', size(30_000, 30_000), 'photos'],
    ['hugePicture', '30 000 × 30 000, as an original', size(30_000, 30_000), 'originals'],
    ['accepted', 'an original of 12 000 × 9000', size(12_000, 9000), 'originals'],
    ['notAPhoto', 'SVG with script', text('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'), 'photos'],
    ['notAPhoto', 'SVG as an original', text('<svg onload="alert(1)"/>'), 'originals'],
    ['notAPhoto', 'HTML behind a JPEG’s first bytes', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...text('<html>')]), 'photos'],
    ['notAPhoto', 'PNG', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a), 'photos'],
  ])('%s: %s', async (refusal, _, bytes, shelf) => {
    expect((await outcomeOf(await withPicture(bytes, shelf)))[0]).toBe(refusal);
  }); // biome-ignore format: a table

  it('refuses a thumbnail of 2000 × 10 px', async () => {
    const thumb = new Uint8Array(jpegBytes(200, 5, { widthPx: 2000, heightPx: 10 }));
    const forgery: Forgery = {
      files: (files) => {
        for (const name of Object.keys(files)) if (name.startsWith('thumbs/')) files[name] = thumb;
      },
    };
    expect((await outcomeOf(forgery))[0]).toBe('hugePicture');
  });
});

describe('sealed sheets', () => {
  const sealed = { format: 'underlid-sealed-sheet', b: 1, a: [true, null, 'Ω'] };
  const under = async (bytes: Uint8Array<ArrayBuffer>, name?: string): Promise<Forgery> => {
    const sha256 = name ?? (await sha256Of(bytes));
    return {
      files: (files) => {
        files[`sealed/${sha256}.json`] = bytes;
      },
    };
  };
  it.each<[BundleRefusal | 'accepted', string, string]>([
    ['accepted', 'canonical', canonicalJson(sealed)],
    ['badSealed', 'with its members in another order', JSON.stringify(sealed)],
    ['badSealed', 'with a space', canonicalJson(sealed).replace(':', ': ')],
    ['badSealed', 'with a line end behind', `${canonicalJson(sealed)}\n`],
    ['badSealed', 'with a number written otherwise', canonicalJson(sealed).replace('"b":1', '"b":1.0')],
    ['badSealed', 'with a member twice', canonicalJson(sealed).replace('"b":1', '"b":1,"b":1')],
    ['badJson', 'no JSON', 'sealed'],
    ['badJson', 'with a prototype key', '{"__proto__":1}'],
  ])('%s: %s', async (refusal, _, words) => {
    expect((await outcomeOf(await under(text(words))))[0]).toBe(refusal);
  });

  it('refuses one that is not what its name says', async () => {
    const forgery = await under(text(canonicalJson(sealed)), 'f'.repeat(64));
    expect(await outcomeOf(forgery)).toEqual(['checksum', `sealed/${'f'.repeat(64)}.json is not what its name says`]);
  });

  it('says that one is missing when its closing is there and its bytes are not', async () => {
    const cameTo = { score: null, verdict: { low: 'stop', high: 'stop' }, settled: true };
    const value = { revision: 1, closedAtMs: 1, appVersion: '0.1.0', byteCount: 10, entriesSha256: 'e'.repeat(64), ...cameTo }; // biome-ignore format: one line
    const zip = await forge(
      sound,
      withEntries((all) => all.push(entry('closing', 'f'.repeat(64), value))),
    );
    const result = await readZip(zip);
    if (!result.ok) throw new Error(result.detail);
    const report = await restoreBundle(await storeOn(newPhone()), result.bundle, {
      bringBackDeleted: false,
      cardOf: cardFrom,
    });
    expect(report.packs[0]?.missingSealed).toEqual(['f'.repeat(64)]);
  });
});

describe('texts', () => {
  const maker = (words: string) => withEntries((all) => all.push(entry('nameplate', 'maker', words)));
  it('takes script in a text in as the text it is', async () => {
    const script = '<script>alert(1)</script>"><img src=x onerror=alert(2)>';
    const result = await readZip(await forge(sound, maker(script)));
    const found = result.ok ? result.bundle.packs[0]?.entries.find(({ key }) => key[2] === 'maker') : undefined;
    expect(found?.v).toBe(script);
    expect(result.ok && result.bundle.textChanges).toEqual([]);
  });

  it('takes hidden characters out and lists entry, place and characters', async () => {
    const zip = await forge(
      sound,
      withEntries((all) => {
        all.push(entry('nameplate', 'maker', 'Wr\u202Een\u0000'));
        all.push(entry('nameplate', 'note', 'two\r\nlines'));
        all.push({
          ...entry('answer', 'handles', { kind: 'open', note: 'a\u2066b', list: ['\uFEFFc'] }),
          why: 'w\u0007hy',
        });
      }),
    );
    const result = await readZip(zip);
    if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
    expect(result.bundle.textChanges).toEqual([
      { key: [PACK, 'nameplate', 'maker'], place: '', characters: ['U+202E', 'U+0000'] },
      { key: [PACK, 'answer', 'handles'], place: 'note', characters: ['U+2066'] },
      { key: [PACK, 'answer', 'handles'], place: 'list.0', characters: ['U+FEFF'] },
      { key: [PACK, 'answer', 'handles'], place: 'why', characters: ['U+0007'] },
    ]);
    const found = (part: string) => result.bundle.packs[0]?.entries.find(({ key }) => key[2] === part);
    expect([found('maker')?.v, found('note')?.v]).toEqual(['Wren', 'two\nlines']);
    expect(found('handles')).toMatchObject({ v: { kind: 'open', note: 'ab', list: ['c'] }, why: 'why' });
    const fresh = await storeOn(newPhone());
    await restoreBundle(fresh, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
    expect((await fresh.entriesOf(PACK)).find(({ key }) => key[2] === 'maker')?.v).toBe('Wren');
  });

  it.each<[BundleRefusal, string, Forgery]>([
    ['badEntry', 'a text of nothing but hidden characters', maker('\u202E\u202C')],
    ['tooLarge', 'a maker of 10 MB of one letter', maker('m'.repeat(1e7))],
    ['badJson', 'a maker of 20 001 letters', maker('m'.repeat(20_001))],
    ['badEntry', 'a maker of 121 letters', maker('m'.repeat(121))],
    ['badJson', 'a name turned round', withEntries((all) => all.push(entry('answer', 'x', { 'a\u202Eb': 1 })))],
    ['badJson', 'the name toString', withEntries((all) => all.push(entry('answer', 'x', { toString: 1 })))],
    ['badEntry', 'a part turned round', withEntries((all) => all.push(entry('later', 'a\u202Eb', 1)))],
    ['badEntry', '30 000 values in an entry', withEntries((all) => all.push(entry('later', 'a', Array(30_000).fill(1))))],
    ['badDefinition', 'a definition turned round', { files: (files) => replaceDefinition(files, '{"id":"a\u202Eb"}') }],
  ])('refuses as %s: %s', async (refusal, _, forgery) => {
    expect((await outcomeOf(forgery))[0]).toBe(refusal);
  }); // biome-ignore format: a table
});

/** Under the hash that the forger found for it: only its content is wrong. */
function replaceDefinition(files: Unzipped, words: string): void {
  for (const name of Object.keys(files)) if (name.startsWith('definitions/')) delete files[name];
  files[`definitions/${DEFINITION_HASH}.json`] = text(words);
}
// printf '{"id":"a\xe2\x80\xaeb"}' | sha256sum
const DEFINITION_HASH = '24df000da150503267a55a1aab9dffd285e1a0f6212177733aec7b0d057f2189';
