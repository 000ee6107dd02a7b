import { beforeAll, describe, expect, it } from 'vitest';
import { canonicalJson } from '../../../src/record/canonical-json.ts';
import { MAX_VOICE_BYTES, VOICE_TYPES, type VoiceType } from '../../../src/schema/voice-note.ts';
import type { VerifiedPart } from '../../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import { readZipDirectory } from '../../../src/storage/bundle/zip-directory.ts';
import type { Store } from '../../../src/storage/store.ts';
import { entry, OTHER_PACK, PACK, voiceValue } from '../../record/made-entries.ts';
import { voiceBytes } from '../made-voice.ts';
import { change, newPhone, storeOn, written } from '../open-test-store.ts';
import {
  benchOfPacks,
  bytesOf,
  cardFrom,
  type Forgery,
  forge,
  jpegBytes,
  json,
  leftOutOf,
  partsOf,
  read,
  readZip,
  type SavedPart,
} from './bench-of-packs.ts';

const asBefore = { bringBackDeleted: false, cardOf: cardFrom };

async function verified(part: SavedPart | undefined): Promise<VerifiedPart> {
  const result = await read(part);
  if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
  return result.bundle;
}

async function restored(parts: SavedPart[]): Promise<Store> {
  const fresh = await storeOn(newPhone());
  for (const part of parts) await restoreBundle(fresh, await verified(part), asBefore);
  return fresh;
}

/** A voice note on an item, written as the app would. */
async function writeVoice(store: Store, packId: string, type: VoiceType, length = 300): Promise<string> {
  const bytes = voiceBytes(type, length);
  const sha256 = await sha256Of(bytes);
  const v = { ...voiceValue(), type, byteCount: length, made: null };
  const photos = [{ sha256, shelf: 'voices' as const, content: { type, bytes } }];
  const card = cardFrom(await store.entriesOf(packId));
  await written(store, change([{ subject: 'voice', part: sha256, v }], { packId, card, photos }));
  return sha256;
}

it('brings a voice note of each of the 3 types back on an empty phone byte for byte, with its entry and type', async () => {
  const store = await benchOfPacks();
  const ids = await Promise.all(VOICE_TYPES.map((type) => writeVoice(store, PACK, type)));
  const fresh = await restored(await partsOf(store));
  for (const [i, type] of VOICE_TYPES.entries())
    expect(await fresh.voice(ids[i] ?? '')).toEqual({ type, bytes: voiceBytes(type) });
  expect(await fresh.entriesOf(PACK)).toEqual(await store.entriesOf(PACK));
});

it('lies under voices/, named by its hash alone, as it is', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeVoice(store, PACK, 'audio/ogg');
  const [part] = await partsOf(store);
  const members = await readZipDirectory(part?.blob ?? new Blob());
  const member = members.find(({ path }) => path.startsWith('voices/'));
  expect(member).toMatchObject({ path: `voices/${sha256}`, deflated: false, byteCount: 300 });
});

it('counts saved and restored ones as backed up', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeVoice(store, PACK, 'audio/webm');
  expect(await store.voicesInNoBackup()).toBe(1);
  const parts = await partsOf(store);
  expect(parts[0]?.hashes).toContain(sha256);
  await store.noteBackup(parts.flatMap(({ hashes }) => hashes));
  expect(await store.voicesInNoBackup()).toBe(0);
  expect(await (await restored(parts)).voicesInNoBackup()).toBe(0);
});

it('leaves out, and says so, one whose bytes are gone and one whose bytes are damaged; a restore tells both missing', async () => {
  const store = await benchOfPacks();
  const gone = await writeVoice(store, PACK, 'audio/webm');
  const damaged = await writeVoice(store, PACK, 'audio/ogg');
  const voice = store.voice;
  store.voice = async (sha256) => {
    const content = sha256 === gone ? null : await voice(sha256);
    if (sha256 === damaged && content) new Uint8Array(content.bytes).fill(57, 40, 41);
    return content;
  };
  const parts = await partsOf(store);
  expect((await leftOutOf(store)).toSorted((a, b) => (a.reason < b.reason ? 1 : -1))).toEqual([
    { what: `voices/${gone}`, reason: 'missing' },
    { what: `voices/${damaged}`, reason: 'damaged' },
  ]);
  const report = await restoreBundle(await storeOn(newPhone()), await verified(parts[0]), asBefore);
  expect(report.packs[0]).toMatchObject({ packId: PACK, missingLogs: [], missingVoices: [gone, damaged].sort() });
});

it('holds one that two packs share once, and it stays when one of them is erased', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeVoice(store, PACK, 'audio/mp4');
  await writeVoice(store, OTHER_PACK, 'audio/mp4');
  const parts = await partsOf(store);
  expect(parts[0]?.hashes.filter((hash) => hash === sha256)).toHaveLength(1);
  const fresh = await restored(parts);
  await fresh.erase(PACK);
  expect(await fresh.voice(sha256)).not.toBeNull();
  await fresh.erase(OTHER_PACK);
  expect(await fresh.voice(sha256)).toBeNull();
});

it('leaves a deleted one out, but for one that a closed sheet rests on: that comes back', async () => {
  const store = await benchOfPacks();
  const before = await writeVoice(store, PACK, 'audio/webm');
  const since = await writeVoice(store, PACK, 'audio/ogg');
  const remove = (sha256: string) => written(store, change([{ subject: 'voice', part: sha256, gone: true }]));
  await remove(before);
  const entries = await store.entriesOf(PACK);
  const bytes = new TextEncoder().encode(canonicalJson({ format: 'underlid-sealed-sheet', entries }));
  const sheet = await sha256Of(bytes);
  const v = { revision: 1, closedAtMs: 1, appVersion: '0.1.0', byteCount: bytes.byteLength, entriesSha256: 'e'.repeat(64), score: null, verdict: { low: 'stop', high: 'stop' }, settled: false }; // biome-ignore format: one line
  const photos = [
    { sha256: sheet, shelf: 'sealed' as const, content: { type: 'application/json', bytes: bytes.buffer } },
  ];
  await written(store, change([{ subject: 'closing', part: sheet, v }], { photos }));
  await remove(since);
  const fresh = await restored(await partsOf(store));
  expect([await fresh.voice(before), await fresh.voice(since)]).toEqual([
    null,
    { type: 'audio/ogg', bytes: voiceBytes('audio/ogg') },
  ]);
});

describe('forged by someone who knows the format', () => {
  let sound: Uint8Array<ArrayBuffer>;
  beforeAll(async () => {
    sound = await bytesOf((await partsOf(await benchOfPacks()))[0]);
  });
  const text = (words: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(words);
  /** Of a recording that does not shrink, so that it is not taken for a bomb. */
  const noise = (length: number) => {
    const bytes = new Uint8Array(jpegBytes(length, 9));
    bytes.set([0x1a, 0x45, 0xdf, 0xa3]);
    return bytes;
  };
  const under = async (bytes: Uint8Array<ArrayBuffer>, name?: string): Promise<Forgery> => {
    const sha256 = name ?? (await sha256Of(bytes));
    return {
      files: (files) => {
        files[`voices/${sha256}`] = bytes;
      },
    };
  };
  const outcomeOf = async (forgery: Forgery) => {
    const result = await readZip(await forge(sound, forgery));
    return result.ok ? ['accepted', ''] : [result.refusal, result.detail];
  };

  it.each<[string, string, Uint8Array<ArrayBuffer>]>([
    ['accepted', 'an Ogg of 4 bytes', text('OggS')],
    ['notAVoice', 'no bytes', text('')],
    ['notAVoice', 'a page with a script', text('<html><script>alert(1)</script>')],
    ['notAVoice', 'SVG with a script', text('<svg onload="alert(1)"/>')],
    ['notAVoice', 'WAVE', text('RIFF0000WAVEfmt ')],
    ['accepted', '10 MB', noise(MAX_VOICE_BYTES)],
    ['tooLarge', '10 MB and one byte', noise(MAX_VOICE_BYTES + 1)],
  ])('%s: %s', async (refusal, _, bytes) => {
    expect((await outcomeOf(await under(bytes)))[0]).toBe(refusal);
  });

  it('refuses one that is not what its name says', async () => {
    const forgery = await under(text('OggS and more'), 'f'.repeat(64));
    expect(await outcomeOf(forgery)).toEqual(['checksum', `voices/${'f'.repeat(64)} is not what its name says`]);
  });

  it('keeps it as what its bytes say, whatever type the list and the entry give it', async () => {
    const bytes = text('OggS and a <script>');
    const sha256 = await sha256Of(bytes);
    const zip = await forge(sound, {
      files: (files) => {
        files[`voices/${sha256}`] = bytes;
        const path = `entries/${PACK}.json`;
        const entries = JSON.parse(new TextDecoder().decode(files[path])) as unknown[];
        files[path] = json([...entries, entry('voice', sha256, { ...voiceValue(), type: 'audio/mp4' })]);
      },
      manifest: ({ files }) => {
        for (const file of files) Object.assign(file, { type: 'text/html' });
      },
    });
    const result = await readZip(zip);
    if (!result.ok) throw new Error(result.detail);
    const fresh = await storeOn(newPhone());
    await restoreBundle(fresh, result.bundle, asBefore);
    expect(await fresh.voice(sha256)).toEqual({ type: 'audio/ogg', bytes: bytes.buffer });
  });

  it.each([`voices/${'0'.repeat(64)}.webm`, `voices/${'0'.repeat(32)}`, `VOICES/${'0'.repeat(64)}`])(
    'passes over %s, which is no place of ours, and says so',
    async (path) => {
      const forgery: Forgery = {
        files: (files) => {
          files[path] = text('OggS');
        },
      };
      const result = await readZip(await forge(sound, forgery));
      expect(result.ok && result.bundle.skipped).toEqual([path]);
    },
  );
});
