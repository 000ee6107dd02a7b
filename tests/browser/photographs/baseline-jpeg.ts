/**
 * A baseline JPEG made of 16 × 16 px tiles, each its own restart interval, so that a picture of any size is put together
 * from a few tiles encoded once: 48 megapixels in well under a second. 4:2:0, tables of ISO/IEC 10918-1 Annex K.
 */
export interface TiledPicture {
  columns: number;
  rows: number;
  /** Index into `tiles`. */
  tileAt: (column: number, row: number) => number;
  /** 256 luminance samples (0–255), and one blue and one red difference (0–255, 128 is none) for the whole tile. */
  tiles: { luma: Uint8Array; cb: number; cr: number }[];
}

export const TILE_PX = 16;

export function baselineJpeg({ columns, rows, tileAt, tiles }: TiledPicture): Uint8Array<ArrayBuffer> {
  const encoded = tiles.map(encodeTile);
  const parts: Uint8Array[] = [header(columns * TILE_PX, rows * TILE_PX)];
  const count = columns * rows;
  for (let i = 0; i < count; i++) {
    const tile = encoded[tileAt(i % columns, Math.floor(i / columns))];
    if (tile === undefined) throw new RangeError('baselineJpeg: tileAt must name one of the tiles');
    parts.push(tile, i === count - 1 ? Uint8Array.of(0xff, 0xd9) : RESTARTS[i % 8]!);
  }
  return new Uint8Array(Buffer.concat(parts));
}

const RESTARTS = Array.from({ length: 8 }, (_, i) => Uint8Array.of(0xff, 0xd0 + i));

// Annex K tables 1 and 2, divided by 4: about what a phone camera uses.
const LUMA_STEPS = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
].map((step) => Math.max(1, Math.round(step / 4)));
const CHROMA_DC_STEP = 4;

const ZIGZAG = [
  0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21, 28,
  35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54, 47,
  55, 62, 63,
];

// One DC and one AC table serve all components: flat code lengths instead of Annex K's, so that no table need be copied.
// DC: 12 size classes of 4 bits. AC: 162 (run, size) symbols, ordered by size, the small ones in 6 bits, the rest in 10.
const DC_SYMBOLS = Array.from({ length: 12 }, (_, size) => size);
const AC_SYMBOLS = [0x00, 0xf0];
for (let size = 1; size <= 10; size++) for (let run = 0; run < 16; run++) AC_SYMBOLS.push((run << 4) | size);
const SHORT_AC_CODES = 48;

const dcCode = (size: number): [code: number, bits: number] => [size, 4];
function acCode(symbol: number): [code: number, bits: number] {
  const at = AC_SYMBOLS.indexOf(symbol);
  return at < SHORT_AC_CODES ? [at, 6] : [(SHORT_AC_CODES << 4) + at - SHORT_AC_CODES, 10];
}

function header(widthPx: number, heightPx: number): Uint8Array {
  const u16 = (n: number) => [n >> 8, n & 255];
  const segment = (marker: number, content: number[]) => [0xff, marker, ...u16(content.length + 2), ...content];
  const lengths = (counts: Record<number, number>) => Array.from({ length: 16 }, (_, i) => counts[i + 1] ?? 0);
  return Uint8Array.from([
    0xff,
    0xd8,
    ...segment(0xdb, [0, ...ZIGZAG.map((at) => LUMA_STEPS[at]!)]),
    ...segment(0xdb, [1, ...ZIGZAG.map(() => CHROMA_DC_STEP)]),
    ...segment(0xc0, [8, ...u16(heightPx), ...u16(widthPx), 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1]),
    ...segment(0xc4, [0x00, ...lengths({ 4: DC_SYMBOLS.length }), ...DC_SYMBOLS]),
    ...segment(0xc4, [0x10, ...lengths({ 6: SHORT_AC_CODES, 10: AC_SYMBOLS.length - SHORT_AC_CODES }), ...AC_SYMBOLS]),
    ...segment(0xdd, u16(1)),
    ...segment(0xda, [3, 1, 0, 2, 0, 3, 0, 0, 63, 0]),
  ]);
}

function encodeTile({ luma, cb, cr }: TiledPicture['tiles'][number]): Uint8Array {
  const writer = bitWriter();
  let previousDc = 0;
  for (const [left, top] of [
    [0, 0],
    [8, 0],
    [0, 8],
    [8, 8],
  ] as const) {
    const coefficients = cosineTransform((x, y) => luma[(top + y) * 16 + left + x]! - 128);
    const levels = ZIGZAG.map((at) => Math.round(coefficients[at]! / LUMA_STEPS[at]!));
    writeBlock(writer, levels, previousDc);
    previousDc = levels[0]!;
  }
  // A flat 8 × 8 block has 8 × its value as its only coefficient.
  for (const level of [cb, cr]) writeBlock(writer, [Math.round((8 * (level - 128)) / CHROMA_DC_STEP)], 0);
  return writer.finish();
}

function cosineTransform(sample: (x: number, y: number) => number): number[] {
  const scale = (k: number) => (k === 0 ? Math.SQRT1_2 : 1) / 2;
  return Array.from({ length: 64 }, (_, at) => {
    const [u, v] = [at % 8, Math.floor(at / 8)];
    let sum = 0;
    for (let y = 0; y < 8; y++) for (let x = 0; x < 8; x++) sum += sample(x, y) * COSINES[u]![x]! * COSINES[v]![y]!;
    return sum * scale(u) * scale(v);
  });
}

const COSINES = Array.from({ length: 8 }, (_, k) =>
  Array.from({ length: 8 }, (_, x) => Math.cos(((2 * x + 1) * k * Math.PI) / 16)),
);

type BitWriter = ReturnType<typeof bitWriter>;

function writeBlock(writer: BitWriter, levels: number[], previousDc: number): void {
  const difference = levels[0]! - previousDc;
  writer.write(...dcCode(sizeClass(difference)));
  writer.writeValue(difference);
  let run = 0;
  const last = levels.findLastIndex((level, at) => at > 0 && level !== 0);
  for (let at = 1; at <= last; at++) {
    const level = levels[at]!;
    if (level === 0) {
      run++;
      continue;
    }
    for (; run > 15; run -= 16) writer.write(...acCode(0xf0));
    writer.write(...acCode((run << 4) | sizeClass(level)));
    writer.writeValue(level);
    run = 0;
  }
  if (last < 63) writer.write(...acCode(0x00));
}

function sizeClass(value: number): number {
  return 32 - Math.clz32(Math.abs(value));
}

function bitWriter() {
  const bytes: number[] = [];
  let held = 0;
  let heldBits = 0;
  function write(code: number, bits: number) {
    for (let bit = bits - 1; bit >= 0; bit--) {
      held = (held << 1) | ((code >> bit) & 1);
      if (++heldBits < 8) continue;
      bytes.push(held);
      if (held === 0xff) bytes.push(0);
      held = 0;
      heldBits = 0;
    }
  }
  return {
    write,
    writeValue(value: number) {
      const bits = sizeClass(value);
      write(value < 0 ? value + (1 << bits) - 1 : value, bits);
    },
    finish() {
      while (heldBits > 0) write(1, 1);
      return Uint8Array.from(bytes);
    },
  };
}
