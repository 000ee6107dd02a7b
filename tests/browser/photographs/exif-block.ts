/** Hand-built Exif blocks (TIFF 6.0 §2, CIPA DC-008), right ones and, by the raw fields, wrong ones. */

export interface TiffField {
  tag: number;
  /** 2 ASCII, 3 SHORT, 4 LONG, 5 RATIONAL. */
  type: number;
  count: number;
  /** Up to 4 bytes stand in the field; more are put behind the directory. */
  bytes: number[];
}

export interface ExifContent {
  littleEndian: boolean;
  orientation?: number;
  /** `YYYY:MM:DD hh:mm:ss` as the camera writes it. */
  timeTaken?: string;
  offsetTaken?: string;
  gps?: boolean;
}

/** 47° 04′ 27.13″ N, 11° 09′ 51.77″ E, as degrees, minutes and hundredths of seconds: a place to look for in outputs. */
export const POSITION_RATIONALS = [
  [47, 1, 4, 1, 2713, 100],
  [11, 1, 9, 1, 5177, 100],
] as const;

export function exifBlock({ littleEndian, orientation, timeTaken, offsetTaken, gps }: ExifContent): Uint8Array {
  const order = byteOrder(littleEndian);
  const exifFields: TiffField[] = [];
  if (timeTaken !== undefined) exifFields.push(ascii(0x9003, timeTaken));
  if (offsetTaken !== undefined) exifFields.push(ascii(0x9011, offsetTaken));
  const gpsFields = gps ? positionFields(order) : [];

  const base: TiffField[] = [ascii(0x010f, 'Invented Camera Works')];
  if (orientation !== undefined) base.push({ tag: 0x0112, type: 3, count: 1, bytes: order.u16(orientation) });
  const pointer = (tag: number, at: number): TiffField => ({ tag, type: 4, count: 1, bytes: order.u32(at) });
  // Sizes do not depend on where the pointers lead, so a first pass with zeros tells where each directory starts.
  const exifAt = 8 + directory([...base, pointer(0x8769, 0), pointer(0x8825, 0)], 8, order).length;
  const exif = directory(exifFields, exifAt, order);
  const gpsAt = exifAt + exif.length;
  const first = directory([...base, pointer(0x8769, exifAt), pointer(0x8825, gpsAt)], 8, order);
  const mark = littleEndian ? [0x49, 0x49] : [0x4d, 0x4d];
  return Uint8Array.from([
    ...mark,
    ...order.u16(42),
    ...order.u32(8),
    ...first,
    ...exif,
    ...directory(gpsFields, gpsAt, order),
  ]);
}

export interface ByteOrder {
  u16(n: number): number[];
  u32(n: number): number[];
}

export function byteOrder(littleEndian: boolean): ByteOrder {
  const ordered = (bytes: number[]) => (littleEndian ? bytes.reverse() : bytes);
  return {
    u16: (n) => ordered([(n >>> 8) & 255, n & 255]),
    u32: (n) => ordered([n >>> 24, (n >>> 16) & 255, (n >>> 8) & 255, n & 255]),
  };
}

/** One directory and the values that do not fit into its fields. */
export function directory(fields: TiffField[], startAt: number, order: ByteOrder): number[] {
  const entries: number[] = [];
  const values: number[] = [];
  const valuesAt = startAt + 2 + fields.length * 12 + 4;
  for (const { tag, type, count, bytes } of fields) {
    entries.push(...order.u16(tag), ...order.u16(type), ...order.u32(count));
    if (bytes.length <= 4) entries.push(...bytes, ...Array<number>(4 - bytes.length).fill(0));
    else {
      entries.push(...order.u32(valuesAt + values.length));
      values.push(...bytes);
    }
  }
  return [...order.u16(fields.length), ...entries, ...order.u32(0), ...values];
}

export function ascii(tag: number, text: string): TiffField {
  const bytes = [...Buffer.from(`${text}\0`, 'latin1')];
  return { tag, type: 2, count: bytes.length, bytes };
}

function positionFields({ u32 }: ByteOrder): TiffField[] {
  const rational = (tag: number, numbers: readonly number[]): TiffField => ({
    tag,
    type: 5,
    count: 3,
    bytes: numbers.flatMap((n) => u32(n)),
  });
  return [
    ascii(0x0001, 'N'),
    rational(0x0002, POSITION_RATIONALS[0]),
    ascii(0x0003, 'E'),
    rational(0x0004, POSITION_RATIONALS[1]),
  ];
}
