import { type Unzipped, unzipSync, zipSync } from 'fflate';
import { jpegBytes } from '../storage/bundle/bench-of-packs.ts';
import { type Expected, type HostileFile, refused, taken, utf8 } from './hostile-file.ts';
import { PHOTO_ID, sha256, soundBundle, VOICE } from './sound-bench.ts';
import { blackPng, sayingSize, tinyJpeg } from './tiny-pictures.ts';
import { ENTRIES_PATH, everyPlace, forged, inPlaceOf, nth, patched, withEntriesText, withFile } from './zip-tricks.ts';

type Row = [name: string, expect: Expected, bytes: () => Promise<Uint8Array<ArrayBuffer>>];

const path = (name: string): Row => [
  `path ${name.slice(0, 30)}`,
  refused('unsafePath'),
  () => forged(withFile(name, utf8('x'))),
];
const html = utf8('<!doctype html><script>window.ran=1</script>');
const svg = utf8('<svg xmlns="http://www.w3.org/2000/svg"><script>window.ran=1</script></svg>');
const zeros = new Uint8Array(8 * 1024 * 1024);

/** Bundles whose zip, list or files are not what they seem. */
const ROWS: Row[] = [
  path('../../escape.jpg'),
  path('/etc/passwd'),
  path('C:/Windows/x.dll'),
  path('photos\\..\\x.jpg'),
  path('./manifest.json'),
  path('photos/x\u0000.jpg'),
  path('photos/\u202egpj.exe'),
  path(`${'a'.repeat(201)}`),
  ['a name twice', refused('duplicatePath'), () => doubled((name) => name)],
  ['a name twice but for its case', refused('duplicatePath'), () => doubled((name) => name.toUpperCase())],
  ['a bomb by ratio: 8 MB of zeros in 8 kB', refused('tooLarge'), () => forged(withFile('logs/zeros', zeros))],
  ['a bomb by total: two files of 300 MB', refused('tooLarge'), bombByTotal],
  ['a bomb that says it is small', refused('tooLarge'), bombThatLies],
  ['a size that is too small', refused('damagedZip'), () => patched((zip, view) => void view.setUint32(nth(zip, 'central', 1) + 24, 7, true))],
  ['a size in the list that is none of the file', refused('checksum'), () => forged({ manifest: (m) => { for (const file of m.files) file.byteCount += 1; } })],
  ['a size of 1e308 in the list', refused('badManifest'), () => forged({ manifest: (m) => { for (const file of m.files) file.byteCount = 1e308; } })],
  ['a sum that is none of the file', refused('checksum'), () => forged({ manifest: (m) => { for (const file of m.files) file.sha256 = '0'.repeat(64); } })],
  ['a manifest whose CRC-32 is another', refused('damagedZip'), () => patched((zip) => { zip[(everyPlace(zip, '"0.1.0"')[0] ?? 0) + 1] = 0x39; return zip; })],
  ['a zip inside a zip', refused('unlistedFile'), async () => zipped(await forged({}), { 'inner.zip': await soundBundle() })],
  ['a bundle as the only file of a zip', refused('notABundle'), async () => zipSync({ 'bundle.zip': await soundBundle() }) as Uint8Array<ArrayBuffer>],
  ['encrypted', refused('encrypted'), () => patched((zip, view) => void view.setUint16(nth(zip, 'central', 0) + 8, 1, true))],
  ['zip64 sizes', refused('damagedZip'), () => patched((zip, view) => { for (const at of [20, 24]) view.setUint32(nth(zip, 'central', 0) + at, 0xffff_ffff, true); return zip; })],
  // Unix mode S_IFLNK | 0777 in the upper half of the external attributes (APPNOTE.TXT 4.4.15; stat.h): content is read as bytes, never followed.
  ['a symbolic link', taken(), () => patched((zip, view) => { const at = nth(zip, 'central', 1); view.setUint16(at + 4, 0x0314, true); view.setUint32(at + 38, 0xa1ff_0000, true); return zip; })],
  ['a symbolic link beside the files', refused('unlistedFile'), async () => zipped(await forged({}), { link: utf8('/etc/passwd') })],
  ['a list of 60 001 files', refused('badManifest'), () => forged({ manifest: (m) => { m.files = Array.from({ length: 60_001 }, (_, i) => ({ path: `photos/${sha256(String(i))}.jpg`, byteCount: 1, sha256: '0'.repeat(64) })); } })],
  ['two packs with the same id', refused('badManifest'), () => forged({ manifest: (m) => { m.packIds = [String((m.packIds as string[])[0]), String((m.packIds as string[])[0])]; } })],
  ['a newer schema', refused('newer'), () => forged({ manifest: (m) => { m.schemaVersion = 9_007_199_254_740_991; } })],
  ['part 1e308 of 1e308', refused('badManifest'), () => forged({ manifest: (m) => { m.part = 1e308; m.parts = 1e308; } })],
  ['prototype keys in the manifest', refused('badJson'), () => manifestText((text) => text.replace('{', '{"__proto__":{"isAdmin":true},'))],
  ['constructor in the manifest', refused('badJson'), () => manifestText((text) => text.replace('{', '{"constructor":{"prototype":{}},'))],
  ['entries nested 100 000 levels', refused('badJson'), () => forged(withEntriesText(() => '['.repeat(100_000) + ']'.repeat(100_000)))],
  ['a text of 10 MB', refused('badJson'), () => forged(withEntriesText((text) => text.replace('Bought over the counter.', tenMegabytes())))],
  ['a name of 10 MB', refused('badJson'), () => forged(withEntriesText((text) => text.replace('"demo"', `"${tenMegabytes()}"`).replace('{"key"', `{"${tenMegabytes()}":1,"key"`)))],
  ['entries in UTF-16', refused('badJson'), () => forged(withFile(ENTRIES_PATH, new Uint8Array(Buffer.from('\ufeff[]', 'utf16le'))))],
  ['a page of HTML as a photo', refused('notAPhoto'), () => asPhoto(html)],
  ['a text as a photo', refused('notAPhoto'), () => asPhoto(utf8('not a picture'))],
  ['a PNG as a photo', refused('notAPhoto'), () => asPhoto(blackPng(64, 48))],
  ['an SVG with script as a photo', refused('notAPhoto'), () => asPhoto(svg)],
  ['an SVG with script as a thumbnail', refused('notAPhoto'), () => forged(inPlaceOf('thumbs/', svg))],
  ['a JPEG’s head before a page of HTML', refused('notAPhoto'), () => asPhoto(Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...html]))],
  ['a JPEG cut off in its head', refused('notAPhoto'), () => asPhoto(tinyJpeg(5).slice(0, 100))],
  ['a JPEG of 30 000 × 30 000 px', refused('hugePicture'), () => asPhoto(sayingSize(tinyJpeg(5), 30_000, 30_000))],
  ['a thumbnail of 30 000 × 30 000 px', refused('hugePicture'), () => forged(inPlaceOf('thumbs/', sayingSize(tinyJpeg(5), 30_000, 30_000)))],
  ['a photo of another size than its entry', refused('otherPicture'), () => forged(withEntriesText((text) => text.replace('"widthPx":64', '"widthPx":65')))],
  ['a page of HTML as a voice note', refused('notAVoice'), () => asVoice(html)],
  ['an SVG with script as a voice note', refused('notAVoice'), () => asVoice(svg)],
  ['a JPEG as a voice note', refused('notAVoice'), () => asVoice(tinyJpeg(5))],
  ['a voice note of no bytes', refused('notAVoice'), () => asVoice(utf8(''))],
  ['a voice note that begins as one and goes on as HTML', taken(), () => asVoice(Uint8Array.from([...utf8('OggS'), ...html]))],
  ['a voice note of 11 MB', refused('tooLarge'), () => asVoice(recordingOf(11 * 1024 * 1024))],
  ['a voice note under the name of another', refused('checksum'), () => forged(inPlaceOf('voices/', utf8('OggS of another')))],
  ['a voice note that is listed and not there', refused('missingFile'), () => forged({ manifest: ({ files }) => files.push({ path: `voices/${'e'.repeat(64)}`, byteCount: 4, sha256: 'e'.repeat(64) }) })],
  ['a voice note that no list names', refused('unlistedFile'), async () => zipped(await soundBundle(), { [`voices/${'e'.repeat(64)}`]: utf8('OggS') })],
  ['a voice note whose bytes are not in it', taken(), () => forged({ files: (files) => { delete files[`voices/${sha256(VOICE)}`]; } })],
  ['a definition under the name of another', refused('badDefinition'), () => forged(inPlaceOf('definitions/', utf8('{"id":"lfp-drop-in","version":"1.1.0"}')))],
  ['a JPEG that is a zip as well, as the whole file', refused('notABundle'), async () => polyglotZip()],
  ['no zip at all', refused('notAZip'), async () => html],
]; // biome-ignore format: a table

export const BUNDLE_STRUCTURES: HostileFile[] = ROWS.map(([name, expect, bytes]) => ({
  name,
  kind: 'bundle',
  bytes,
  expect,
}));

/** Under the hash of its own bytes. */
function asVoice(bytes: Uint8Array<ArrayBuffer>) {
  return forged(withFile(`voices/${sha256(bytes)}`, bytes));
}

function recordingOf(length: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(jpegBytes(length, 4));
  bytes.set(utf8('OggS'));
  return bytes;
}

function tenMegabytes(): string {
  // Not of one letter: that would be refused as a bomb before it is read.
  return Buffer.from(jpegBytes(7_500_000, 3)).toString('base64');
}

/** In place of the photo, listed and named rightly: only what it is can tell. */
function asPhoto(bytes: Uint8Array<ArrayBuffer>) {
  return forged(inPlaceOf('photos/', bytes, `photos/${sha256(bytes)}.jpg`));
}

/** The thumbnail's name, in its own header and in the list, made that of the photo, which is as long. */
function doubled(named: (path: string) => string) {
  return patched((zip) => {
    const thumb = `thumbs/${PHOTO_ID}.jpg`;
    const headers = everyPlace(zip, thumb).filter((at) => isRecord(zip, at - 30, 3) || isRecord(zip, at - 46, 1));
    for (const at of headers) zip.set(Buffer.from(named(`photos/${PHOTO_ID}.jpg`), 'latin1'), at);
    return zip;
  });
}

function isRecord(zip: Uint8Array, at: number, kind: 1 | 3): boolean {
  return zip[at] === 0x50 && zip[at + 1] === 0x4b && zip[at + 2] === kind;
}

/** 2.2 MB each that do not shrink, said to unpack to 300 MB: 136 times, within the ratio. */
async function bombByTotal() {
  const [a, b] = [1, 2].map((seed) => new Uint8Array(jpegBytes(2_200_000, seed)));
  const zip = zipped({ 'a.txt': a ?? utf8(''), 'b.txt': b ?? utf8('') });
  for (const place of [0, 1])
    new DataView(zip.buffer).setUint32(nth(zip, 'central', place) + 24, 300 * 1024 * 1024, true);
  return zip;
}

async function bombThatLies() {
  const zip = zipped({ 'manifest.json': zeros });
  new DataView(zip.buffer).setUint32(nth(zip, 'central', 0) + 24, 10_000, true);
  return zip;
}

/** A tiny JPEG, and a stray zip behind it that knows where it lies. */
async function polyglotZip() {
  const head = tinyJpeg(1);
  const zip = zipped({ 'a.txt': utf8('a') });
  const both = new Uint8Array(head.length + zip.length);
  both.set(head);
  both.set(zip, head.length);
  const view = new DataView(both.buffer);
  view.setUint32(nth(both, 'central', 0) + 42, head.length, true);
  view.setUint32(both.length - 6, view.getUint32(both.length - 6, true) + head.length, true);
  return both;
}

function manifestText(edit: (text: string) => string) {
  return forged({}).then((zip) => {
    const files = unzipSync(zip);
    return zipped({ ...files, 'manifest.json': utf8(edit(new TextDecoder().decode(files['manifest.json']))) });
  });
}

/** The files of a zip, if any, with more beside them that its list does not name. */
function zipped(first: Uint8Array | Unzipped, more: Unzipped = {}): Uint8Array<ArrayBuffer> {
  const files = first instanceof Uint8Array ? unzipSync(first) : first;
  return zipSync({ ...files, ...more }) as Uint8Array<ArrayBuffer>;
}
