import type { Orientation, SizePx } from './orientation.ts';

/** A checked picture, ready for a decoder. */
export interface Decodable {
  blob: Blob;
  /** Known for a JPEG, whose bytes carry no orientation any more; null: ask the decoder, which also turns it. */
  storedSizePx: SizePx | null;
  /** Still to be applied. */
  orientation: Orientation;
}

export interface Encoded extends SizePx {
  bytes: ArrayBuffer;
}

/** `decode`: the browser could not read or draw it. `canvas`: it can, but hands back other pixels than were drawn. */
export type Shrunk = { ok: true; picture: Encoded; thumb: Encoded } | { ok: false; failed: 'decode' | 'canvas' };

/** One way to decode, turn upright, shrink and encode, on white ground. There are two: in the worker and on the page. */
export type Shrink = (picture: Decodable, longestSidePx: number) => Promise<Shrunk>;
