import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { cardFromEntries } from '../../src/app/card-of.ts';
import type { Entry } from '../../src/schema/entry.ts';
import type { IncomingBytes, Shelf, Store } from '../../src/storage/store.ts';
import { BUILT_IN_PATH, builtIn } from '../checklists/built-in.ts';
import { DEVICE, stampAt } from '../record/made-entries.ts';
import { BESIDE_VALUES } from '../schema/beside-values.ts';
import { FULL_VALUES } from '../schema/live-tests/full-values.ts';
import { WREN_SEAL } from '../sheet/sealed/demo-records.ts';
import { bytesOf, partsOf } from '../storage/bundle/bench-of-packs.ts';
import { voiceBytes } from '../storage/made-voice.ts';
import { newPhone, type Phone, storeOn } from '../storage/open-test-store.ts';
import { utf8 } from './hostile-file.ts';
import { tinyJpeg } from './tiny-pictures.ts';

/** The pack that every sound bundle here holds, and one that is on the phone beforehand. */
export const SOUND_PACK = '5'.repeat(32);
export const OWN_PACK = '7'.repeat(32);
export const DEFINITION_TEXT = readFileSync(BUILT_IN_PATH, 'utf8');

export const sha256 = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');

export const PICTURE = tinyJpeg(1);
export const PHOTO_ID = sha256(PICTURE);
/** Another one, so that a photo of the pack on the phone is not brought by the bundle. */
const OWN_PICTURE = tinyJpeg(2);
export const VOICE = new Uint8Array(voiceBytes('audio/webm'));
export const LOG = utf8(
  `Time [s],Voltage [V],Current [A]\n${Array.from({ length: 120 }, (_, i) => `${i * 60},${(26.4 - i * 0.05).toFixed(2)},20`).join('\n')}\n`,
);

/** A whole record of the built-in checklist with a photo, callouts, a log, a test of every kind, and all that stands beside. */
export function soundEntries(packId = SOUND_PACK, picture = PICTURE): Entry[] {
  const at = stampAt(1_764_000_000_000);
  const photoId = sha256(picture);
  const made = (subject: string, part: string, v: unknown): Entry => ({
    key: [packId, subject, part],
    v,
    at,
    by: DEVICE,
  });
  const left = WREN_SEAL.entries
    .filter(({ key: [, subject] }) => !['photo', 'callout', 'photoItem', 'ruler', 'log'].includes(subject))
    .map((entry): Entry => ({ ...structuredClone(entry), key: [packId, entry.key[1], entry.key[2]] }));
  const byName = new Map(left.map((entry) => [entry.key.join(), entry]));
  const more = [
    made('pack', 'made', {}),
    made('pack', 'checklist', { id: builtIn.id, version: builtIn.version, sha256: sha256(DEFINITION_TEXT) }),
    made('nameplate', 'name', packId === OWN_PACK ? 'Own pack' : 'Sound pack'),
    made('nameplate', 'note', 'Bought over the counter.'),
    made('photo', photoId, { zone: 'cells', widthPx: 64, heightPx: 48, byteCount: picture.byteLength, originalSha256: photoId, caption: 'The vents', made: at }),
    made('photoItem', `${photoId}/cell-vents`, true),
    made('callout', '1'.repeat(32), { photoId, kind: 'leader', points: [[0.1, 0.2], [0.5, 0.5]], text: 'tape', made: at }),
    made('callout', '2'.repeat(32), { photoId, kind: 'text', points: [[0.5, 0.6]], text: 'over the vent', made: at }),
    made('log', sha256(LOG), { name: 'gentle.csv', byteCount: LOG.byteLength, rowCount: 120, made: at }),
    made('words', 'opinion', 'I would keep it.'),
    ...Object.entries(BESIDE_VALUES).flatMap(([subject, values]) =>
      values.slice(0, 1).map(({ part, value }) => made(subject, subject === 'voice' ? sha256(VOICE) : part, value)),
    ),
    ...Object.entries(FULL_VALUES)
      .filter(([subject]) => subject !== 'log' && subject !== 'ruler')
      .map(([subject, { part, value }]) => made(subject, part, value)),
  ]; // biome-ignore format: one entry a line
  for (const entry of more) byName.set(entry.key.join(), entry);
  return [...byName.values()];
}

/** A phone that holds one whole pack of its own, a checklist, a note of its own and sealed bytes. */
export async function phoneWithAPack(): Promise<{ phone: Phone; store: Store }> {
  const phone = newPhone();
  const store = await storeOn(phone);
  await mergeSound(store, OWN_PACK, OWN_PICTURE);
  await store.keep('theme', 'paper');
  return { phone, store };
}

let sound: Promise<Uint8Array<ArrayBuffer>> | null = null;

/** A bundle of the sound pack as the project itself writes it. */
export function soundBundle(): Promise<Uint8Array<ArrayBuffer>> {
  sound ??= makeBundle();
  return sound;
}

async function makeBundle(): Promise<Uint8Array<ArrayBuffer>> {
  const store = await storeOn(newPhone());
  await mergeSound(store, SOUND_PACK, PICTURE);
  return bytesOf((await partsOf(store))[0]);
}

async function mergeSound(store: Store, packId: string, picture: Uint8Array<ArrayBuffer>): Promise<void> {
  const incoming = (
    shelf: Shelf,
    type: string,
    bytes: Uint8Array<ArrayBuffer>,
    sha = sha256(bytes),
  ): IncomingBytes => ({
    sha256: sha,
    shelf,
    type,
    byteCount: bytes.byteLength,
    read: async () => bytes,
  });
  const merged = await store.mergeIn({
    packId,
    entries: soundEntries(packId, picture),
    bytes: [
      incoming('photos', 'image/jpeg', picture),
      incoming('thumbs', 'image/jpeg', picture),
      incoming('logs', 'text/plain', LOG),
      incoming('voices', 'audio/webm', VOICE),
    ],
    definitions: [{ sha256: sha256(DEFINITION_TEXT), text: DEFINITION_TEXT }],
    cardOf: (entries) => cardFromEntries(packId, entries, builtIn),
    bringBackDeleted: false,
  });
  if (!merged.ok) throw new Error(`${merged.problem}: ${merged.detail}`);
}
