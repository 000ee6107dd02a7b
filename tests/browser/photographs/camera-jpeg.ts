import { baselineJpeg, TILE_PX } from './baseline-jpeg.ts';
import { byteOrder, exifBlock, POSITION_RATIONALS } from './exif-block.ts';
import { SCENE_YCC, type SceneColour, sceneColour, uprightPlace } from './scene.ts';

export interface CameraShot {
  megapixels: 12 | 48;
  /** Exif orientation: the scene is stored so that it stands upright once this is applied. */
  orientation: 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;
  /** Put the position everywhere cameras and editors put it: Exif, XMP, IPTC, maker's segments, comment, data after the picture. */
  gps: boolean;
  /** `YYYY-MM-DDThh:mm:ss±hh:mm`. */
  takenAt: string;
}

/** Stored sizes of common phone cameras, both whole tiles. */
export const STORED_SIZE_PX = { 12: [4032, 3024], 48: [8064, 6048] } as const;

/** A photograph as a phone's camera writes it, in size, weight and metadata; the same bytes on every call. */
export function cameraJpeg(shot: CameraShot): Uint8Array<ArrayBuffer> {
  const picture = storedScene(shot.megapixels, shot.orientation);
  const before = shot.gps ? [jfifWithPreview(), exif(shot), ...placeSegments()] : [exif(shot)];
  const after = shot.gps ? [Buffer.from(`MotionPhoto ${PLACE_TEXT}`)] : [];
  return new Uint8Array(Buffer.concat([picture.subarray(0, 2), ...before, picture.subarray(2), ...after]));
}

/** Stands for the position wherever it is text. */
export const PLACE_TEXT = '47.074203N 11.164381E';

/** Whether the position is anywhere in the bytes: as text, or as the numbers of an Exif block in either byte order. */
export function holdsPosition(bytes: Uint8Array): boolean {
  const haystack = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const numbers = [true, false].flatMap((littleEndian) =>
    POSITION_RATIONALS.map((rationals) => Buffer.from(rationals.flatMap((n) => byteOrder(littleEndian).u32(n)))),
  );
  return [Buffer.from(PLACE_TEXT), ...numbers].some((needle) => haystack.includes(needle));
}

const NOISE_VARIANTS = 16;
const scenes = new Map<string, Uint8Array>();

function storedScene(megapixels: 12 | 48, orientation: number): Uint8Array {
  const key = `${megapixels} ${orientation}`;
  const made = scenes.get(key) ?? makeScene(megapixels, orientation);
  scenes.set(key, made);
  return made;
}

function makeScene(megapixels: 12 | 48, orientation: number): Uint8Array {
  const [columns, rows] = STORED_SIZE_PX[megapixels].map((side) => side / TILE_PX) as [number, number];
  const colours = Object.keys(SCENE_YCC) as SceneColour[];
  const random = seeded(20_240_503);
  const tiles = colours.flatMap((colour) =>
    Array.from({ length: NOISE_VARIANTS }, () => noisyTile(SCENE_YCC[colour], random)),
  );
  return baselineJpeg({
    columns,
    rows,
    tiles,
    tileAt: (column, row) => {
      const colour = sceneColour(...uprightPlace((column + 0.5) / columns, (row + 0.5) / rows, orientation));
      return colours.indexOf(colour) * NOISE_VARIANTS + ((column * 7 + row * 13) % NOISE_VARIANTS);
    },
  });
}

/** Grain of ±12 levels brings a 12 megapixel file to the 4 MB or so that cameras write. */
function noisyTile([y, cb, cr]: readonly [number, number, number], random: () => number) {
  return { luma: Uint8Array.from({ length: 256 }, () => Math.round(y + (random() - 0.5) * 24)), cb, cr };
}

/** Park and Miller's minimal generator: the same grain on every run. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function exif({ orientation, gps, takenAt }: CameraShot): Buffer {
  const block = exifBlock({
    littleEndian: false,
    orientation,
    gps,
    timeTaken: takenAt.slice(0, 19).replaceAll('-', ':').replace('T', ' '),
    offsetTaken: takenAt.slice(19),
  });
  return jpegSegment(0xe1, Buffer.concat([Buffer.from('Exif\0\0'), block]));
}

function placeSegments(): Buffer[] {
  const content = (prefix: string) => Buffer.from(`${prefix}${PLACE_TEXT}`, 'latin1');
  return [
    jpegSegment(0xe1, content('http://ns.adobe.com/xap/1.0/\0')),
    jpegSegment(0xe2, content('MPF\0')),
    jpegSegment(0xe4, content('Maker\0')),
    jpegSegment(0xeb, content('JP')),
    jpegSegment(0xed, content('Photoshop 3.0\0')),
    jpegSegment(0xfe, content('')),
  ];
}

/** A JFIF header whose preview of 2 × 2 px is in truth text. */
function jfifWithPreview(): Buffer {
  const preview = Buffer.alloc(7 * 3);
  preview.write(PLACE_TEXT);
  return jpegSegment(0xe0, Buffer.concat([Buffer.from('JFIF\0\x01\x02\0\0\x01\0\x01\x07\x01', 'latin1'), preview]));
}

export function jpegSegment(marker: number, content: Uint8Array): Buffer {
  const length = content.length + 2;
  return Buffer.concat([Buffer.from([0xff, marker, length >> 8, length & 255]), content]);
}
