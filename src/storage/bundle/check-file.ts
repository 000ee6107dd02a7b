import { canonicalJson } from '../../record/canonical-json.ts';
import { jpegPicture } from '../../schema/jpeg-picture.ts';
import { hiddenPlaces } from '../../schema/plain-text.ts';
import { LOG_TYPE } from '../log-type.ts';
import type { Shelf } from '../store.ts';
import { voiceTypeOf } from '../voice-type.ts';
import { PICTURE_LIMITS } from './bundle-limits.ts';
import type { BundlePath } from './bundle-paths.ts';
import { RefusedBundle } from './refused-bundle.ts';
import { safeJson, textOf } from './safe-json.ts';

/** What one file of a bundle turned out to be. */
export type CheckedFile =
  | { kind: 'entries'; packId: string; input: unknown }
  | { kind: 'definition'; text: string }
  | { kind: 'bytes'; shelf: Shelf; sha256: string; type: string; frame: FrameSize | null }
  | { kind: 'annotations' | 'other' };

export interface FrameSize {
  widthPx: number;
  heightPx: number;
}

export interface FileInBundle {
  path: string;
  place: BundlePath;
  /** Of the bytes, already held against them. */
  sha256: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Checks one file by what its path says it is.
 *
 * Throws  RefusedBundle
 */
export function checkFile({ path, place, sha256, bytes }: FileInBundle): CheckedFile {
  if (place.kind === 'entries' || place.kind === 'annotations') {
    // Annotations are for other programs: looked at all the same, so that nothing unsafe passes on.
    const input = safeJson(path, bytes);
    return place.kind === 'entries' ? { kind: 'entries', packId: place.packId, input } : { kind: 'annotations' };
  }
  if (place.kind === 'other') return { kind: 'other' };
  const isNamedByOther = place.kind === 'bytes' && place.shelf === 'thumbs';
  if (!isNamedByOther && place.sha256 !== sha256) {
    throw new RefusedBundle(
      place.kind === 'definitions' ? 'badDefinition' : 'checksum',
      `${path} is not what its name says`,
    );
  }
  if (place.kind === 'definitions') return { kind: 'definition', text: checkedDefinition(path, bytes) };
  const { shelf } = place;
  const common = { kind: 'bytes' as const, shelf, sha256: place.sha256 };
  // Whatever a log holds is only ever read as text.
  if (shelf === 'logs') return { ...common, type: LOG_TYPE, frame: null };
  if (shelf === 'sealed') {
    checkSealed(path, bytes);
    return { ...common, type: 'application/json', frame: null };
  }
  if (shelf === 'voices') {
    const type = voiceTypeOf(bytes);
    if (type === null) throw new RefusedBundle('notAVoice', `${path} is neither WebM nor MP4 nor Ogg`);
    return { ...common, type, frame: null };
  }
  const picture = jpegPicture(bytes, PICTURE_LIMITS[shelf]);
  if (!picture.ok) throw new RefusedBundle(picture.problem === 'tooLarge' ? 'hugePicture' : 'notAPhoto', path);
  return { ...common, type: 'image/jpeg', frame: picture };
}

/** Its shape is checked where it is used: a record may need a definition that only a newer app can grade by. */
function checkedDefinition(path: string, bytes: Uint8Array): string {
  const definition = safeJson(path, bytes);
  if (typeof definition !== 'object' || definition === null) throw new RefusedBundle('badDefinition', path);
  const [hidden] = hiddenPlaces(definition);
  if (hidden)
    throw new RefusedBundle('badDefinition', `${path}: ${hidden.place} holds ${hidden.characters.join(', ')}`);
  return textOf(path, bytes);
}

/** One text a value: a sealed sheet that is not canonical cannot have been written by us, whatever its hash. */
function checkSealed(path: string, bytes: Uint8Array): void {
  const sealed = safeJson(path, bytes);
  if (textOf(path, bytes) !== canonicalJson(sealed))
    throw new RefusedBundle('badSealed', `${path} is not canonical JSON`);
}
