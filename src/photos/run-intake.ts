import { jpegLayout } from '../schema/jpeg-layout.ts';
import type { Intake, IntakeOptions, IntakeProblem, IntakeStep, TakenIn } from './intake.ts';
import { DETAIL_LONGEST_PX, MEMORY_SUSPECT_PIXELS, MOST_BYTES, MOST_PIXELS, STORED_LONGEST_PX } from './limits.ts';
import { type PictureFacts, pictureFacts } from './picture-facts.ts';
import { sha256Hex } from './sha256-hex.ts';
import type { Decodable, Encoded, Shrink } from './shrink.ts';
import { HEAD_BYTES, sniffFormat } from './sniff-format.ts';
import { stripMetadata } from './strip-metadata.ts';

export interface IntakeJob {
  file: Blob;
  options: IntakeOptions;
  path: TakenIn['path'];
  /** How this path decodes, turns and shrinks. */
  shrink: Shrink;
  onStep: (step: IntakeStep) => void;
}

/** The job's end, and whether the other path might do better: only where decoding failed, never for a fault in the file. */
export interface JobEnd {
  intake: Intake;
  otherPathMayHelp: boolean;
}

/** Takes one picture in, the same way on both paths: read, check, hash, shrink, strip, hash. Returns every field trouble as a value. */
export async function runIntake({ file, options, path, shrink, onStep }: IntakeJob): Promise<JobEnd> {
  onStep('reading');
  const read = await readPicture(file);
  if (!read.ok) return final(read.problem);
  const { bytes, facts } = read;
  // Started now, awaited at the end: hashing and decoding run side by side.
  const originalSha256 = sha256Hex(bytes);

  onStep('shrinking');
  const longestSidePx = options.detail ? DETAIL_LONGEST_PX : STORED_LONGEST_PX;
  const shrunk = await shrink(decodable(bytes, facts), longestSidePx);
  if (!shrunk.ok) {
    const problem = shrunk.failed === 'canvas' ? 'canvasBlocked' : problemOfDecoding(facts);
    return {
      intake: { ok: false, problem },
      otherPathMayHelp: problem !== 'canvasBlocked' && problem !== 'outOfMemory',
    };
  }

  onStep('finishing');
  const picture = bare(shrunk.picture);
  const original = options.keepOriginal ? await strippedOriginal(bytes, facts) : null;
  const photo: TakenIn = {
    sha256: await sha256Hex(picture.bytes),
    type: 'image/jpeg',
    ...picture,
    thumb: { type: 'image/jpeg', ...bare(shrunk.thumb) },
    originalSha256: await originalSha256,
    original,
    takenAt: facts.takenAt,
    path,
  };
  return { intake: { ok: true, photo }, otherPathMayHelp: false };
}

type ReadPicture =
  | { ok: true; bytes: Uint8Array<ArrayBuffer>; facts: PictureFacts }
  | { ok: false; problem: IntakeProblem };

async function readPicture(file: Blob): Promise<ReadPicture> {
  const head = await bytesOf(file.slice(0, HEAD_BYTES));
  if (!head.ok) return head;
  const format = sniffFormat(head.bytes);
  if (format === 'empty') return { ok: false, problem: 'empty' };
  if (format === 'pdf' || format === 'other') return { ok: false, problem: 'notAPicture' };
  if (file.size > MOST_BYTES) return { ok: false, problem: 'tooLarge' };
  const whole = await bytesOf(file);
  if (!whole.ok) return whole;
  const facts = pictureFacts(whole.bytes, format);
  if ((pixelCount(facts) ?? 0) > MOST_PIXELS) return { ok: false, problem: 'tooLarge' };
  return facts.complete && pixelCount(facts) !== 0
    ? { ok: true, bytes: whole.bytes, facts }
    : { ok: false, problem: 'damaged' };
}

type ReadBytes = { ok: true; bytes: Uint8Array<ArrayBuffer> } | { ok: false; problem: IntakeProblem };

async function bytesOf(file: Blob): Promise<ReadBytes> {
  try {
    return { ok: true, bytes: new Uint8Array(await file.arrayBuffer()) };
  } catch (error) {
    // RangeError: no room for the buffer. Anything else comes from the file's keeper (moved, in a cloud, no permission).
    return { ok: false, problem: error instanceof RangeError ? 'outOfMemory' : 'unreadable' };
  }
}

/** Null where the header does not say. */
function pixelCount({ sizePx }: PictureFacts): number | null {
  return sizePx === null ? null : sizePx.widthPx * sizePx.heightPx;
}

/** A JPEG goes to the decoder without its orientation, so that turning is ours alone: engines differ in turning while resizing. */
function decodable(bytes: Uint8Array<ArrayBuffer>, facts: PictureFacts): Decodable {
  const { format, layout, sizePx, orientation } = facts;
  if (layout === null)
    return { blob: new Blob([bytes], { type: `image/${format}` }), storedSizePx: null, orientation: 1 };
  const clean = stripMetadata(bytes, layout, { colourProfile: true, orientation: null });
  return { blob: new Blob([clean], { type: 'image/jpeg' }), storedSizePx: sizePx, orientation: orientation ?? 1 };
}

function problemOfDecoding(facts: PictureFacts): IntakeProblem {
  if (!facts.everyBrowserReadsIt) return 'cannotDecode';
  return (pixelCount(facts) ?? 0) > MEMORY_SUSPECT_PIXELS ? 'outOfMemory' : 'damaged';
}

/** Encoders of some engines add Exif blocks of their own; what is stored carries none. */
function bare({ bytes, widthPx, heightPx }: Encoded): { bytes: ArrayBuffer; widthPx: number; heightPx: number } {
  const encoded = new Uint8Array(bytes);
  const stripped = stripMetadata(encoded, jpegLayout(encoded), { colourProfile: false, orientation: null });
  return { bytes: stripped.buffer, widthPx, heightPx };
}

async function strippedOriginal(
  bytes: Uint8Array,
  { layout, orientation }: PictureFacts,
): Promise<TakenIn['original']> {
  if (layout === null) return null;
  const stripped = stripMetadata(bytes, layout, { colourProfile: true, orientation });
  return { sha256: await sha256Hex(stripped), type: 'image/jpeg', bytes: stripped.buffer };
}

function final(problem: IntakeProblem): JobEnd {
  return { intake: { ok: false, problem }, otherPathMayHelp: false };
}
