/** What a photo becomes on its way in, and what can be wrong with it. Sentences for the problems are in text/. */

export interface IntakeOptions {
  /** Keep 4096 px on the longer side instead of 2048. */
  detail: boolean;
  /** Also return the original's bytes with every metadata segment but the orientation cut out (JPEG only). */
  keepOriginal: boolean;
}

export type IntakeProblem =
  | 'empty'
  | 'notAPicture'
  /** The bytes could not be fetched, e.g. from a cloud folder. */
  | 'unreadable'
  | 'cannotDecode'
  | 'damaged'
  | 'tooLarge'
  | 'outOfMemory'
  /** The browser scrambles drawn pictures against fingerprinting; what it would store is noise. */
  | 'canvasBlocked'
  | 'cancelled';

/** How far it has come, for the line under the picture's place. */
export type IntakeStep = 'reading' | 'shrinking' | 'finishing';

export interface TakenIn {
  /** SHA-256 of `bytes`, hexadecimal: the photo's id. */
  sha256: string;
  type: 'image/jpeg';
  bytes: ArrayBuffer;
  widthPx: number;
  heightPx: number;
  thumb: { type: 'image/jpeg'; bytes: ArrayBuffer; widthPx: number; heightPx: number };
  originalSha256: string;
  /** Only where asked for and possible. */
  original: { sha256: string; type: 'image/jpeg'; bytes: ArrayBuffer } | null;
  /** Local time from the camera, ISO 8601; null where the file does not say. */
  takenAt: string | null;
  /** Which way it went, for the benchmark and the note on Keep. */
  path: 'worker' | 'mainThread';
}

export type Intake = { ok: true; photo: TakenIn } | { ok: false; problem: IntakeProblem };
