import { type Expected, type HostileFile, refused, taken, utf8 } from './hostile-file.ts';
import { SCRIPTS } from './hostile-texts.ts';
import { blackPng, sayingSize, tinyJpeg } from './tiny-pictures.ts';

type Row = [name: string, expect: Expected, bytes: () => Uint8Array<ArrayBuffer>];

const joined = (...parts: Uint8Array[]) => new Uint8Array(Buffer.concat(parts));
/** A comment of the file's own after its first marker (ITU-T T.81, B.2.4.5). */
function withComment(text: string): Uint8Array<ArrayBuffer> {
  const jpeg = tinyJpeg(4);
  const comment = utf8(text);
  return joined(jpeg.subarray(0, 2), Uint8Array.of(0xff, 0xfe, 0, comment.length + 2), comment, jpeg.subarray(2));
}

/** Files handed over as a photo of an item. */
const ROWS: Row[] = [
  ['no bytes', refused('empty'), () => new Uint8Array(0)],
  ['a text', refused('notAPicture'), () => utf8('not a picture')],
  ['a page of HTML', refused('notAPicture'), () => utf8('<!doctype html><script>window.ran=1</script>')],
  ['an SVG with script', refused('notAPicture'), () => utf8('<svg xmlns="http://www.w3.org/2000/svg" onload="window.ran=1"><script>window.ran=1</script></svg>')],
  ['a PDF with script', refused('notAPicture'), () => utf8('%PDF-1.4\n1 0 obj<</OpenAction<</S/JavaScript/JS(app.alert(1))>>>>endobj\n%%EOF\n')],
  ['a JPEG cut off in the middle', refused('damaged'), () => tinyJpeg(4).slice(0, -20)],
  ['a JPEG’s head alone', refused('damaged'), () => Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)],
  ['a JPEG’s head before a page of HTML', refused('damaged'), () => joined(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), utf8('<script>window.ran=1</script>'))],
  ['a JPEG that says 30 000 × 30 000 px', refused('tooLarge'), () => sayingSize(tinyJpeg(4), 30_000, 30_000)],
  ['a true PNG of 30 000 × 30 000 px', refused('tooLarge'), () => blackPng(30_000, 30_000)],
  ['a PNG of 0 × 0 px', refused('damaged'), () => blackPng(0, 0)],
  ['a PNG cut off', refused('damaged'), () => blackPng(640, 480).slice(0, 60)],
  ['a zip behind a JPEG', taken(), () => joined(tinyJpeg(6), Uint8Array.of(0x50, 0x4b, 3, 4), new Uint8Array(40))],
  ['a page of HTML behind a JPEG', taken(), () => joined(tinyJpeg(7), utf8('<script>window.ran=1</script>'))],
  ['script in a JPEG’s comment', taken(), () => withComment(SCRIPTS[0])],
]; // biome-ignore format: a table

export const PICTURE_FILES: HostileFile[] = ROWS.map(([name, expect, bytes]) => ({
  name,
  kind: 'picture',
  bytes: async () => bytes(),
  expect,
}));
