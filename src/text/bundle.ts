import type { BundleRefusal } from '../schema/bundle.ts';
import { plainText } from '../schema/plain-text.ts';

/** Why a backup file was not taken in, and what to do. In every case nothing on the phone was changed. */
export const bundleRefusals: Readonly<Record<BundleRefusal, string>> = {
  notAZip:
    'This file is not a zip, or its end is missing. Choose a backup that Underlid saved, copied whole; its name begins with “underlid-”.',
  damagedZip: 'This backup file is damaged. Copy it again from where it was kept, or use another copy.',
  encrypted: 'This zip is encrypted. Choose the file as Underlid saved it.',
  unsafePath: 'A file in this zip has a name that is not safe to open. It was not made by Underlid.',
  duplicatePath: 'This zip holds the same file twice. It was not made by Underlid, or was changed since.',
  tooLarge: 'This zip would unpack to far more than a backup holds. It was not made by Underlid.',
  notABundle: 'This zip is not a backup of Underlid.',
  newer: 'This backup was made by a newer Underlid. Update this one, then restore.',
  badManifest: 'The list of contents in this backup is not in order. Use another copy.',
  missingFile: 'A file that this backup lists is not in it. Use another copy.',
  unlistedFile: 'This zip holds a file that its list does not name. It was changed since Underlid saved it.',
  checksum: 'A file in this backup is not what was saved. Copy the backup again, or use another copy.',
  badJson: 'A record in this backup cannot be read. Use another copy.',
  badEntry: 'An entry in this backup is not one that Underlid writes. Use another copy.',
  duplicateEntry: 'This backup holds the same entry twice. It was changed since Underlid saved it.',
  impossibleDate: 'An entry in this backup is dated after the year 2099. Check the date of the phone that made it.',
  notAPhoto: 'A photo in this backup is not a JPEG picture. It was changed since Underlid saved it.',
  hugePicture:
    'A picture in this backup is far larger than any that Underlid keeps. It was changed since Underlid saved it.',
  otherPicture:
    'A photo in this backup has not the size that its entry gives it. It was changed since Underlid saved it.',
  badSealed:
    'A closed sheet in this backup is not written as Underlid writes it. It was changed since Underlid saved it.',
  notAVoice: 'A voice note in this backup is no recording that Underlid keeps. It was changed since Underlid saved it.',
  unreadable: 'This file cannot be read to its end. It may have been moved or changed meanwhile. Choose it again.',
  badDefinition: 'A checklist in this backup is not the one it says. It was changed since Underlid saved it.',
  migrationFailed: 'This older backup could not be brought up to date. Keep it, and report this with its detail.',
};

/** Said under every refusal: when nothing else was taken in, and when other files were. */
export const nothingChanged = 'Nothing on this phone was changed.';
export const nothingTaken = 'Nothing of this file was taken in.';

const FOLDERS: readonly [folder: string, words: string][] = [
  ['entries', 'the entries of a pack'],
  ['annotations', 'the callouts of a pack'],
  ['definitions', 'a checklist'],
  ['photos', 'a photo'],
  ['thumbs', 'the small picture of a photo'],
  ['originals', 'the original of a photo'],
  ['logs', 'a log'],
  ['sealed', 'a closed sheet'],
  ['voices', 'a voice note'],
];

/** Longest detail that is shown. Our choice: a path and what is wrong with it fit twice. */
const MAX_DETAIL = 300;

/** Which file in a bundle, and what is wrong with it: the reader's detail with words for its folders. */
export function whereInBundle(detail: string): string {
  const [, folder = ''] = /^([a-z]+)\//.exec(detail) ?? [];
  const words = FOLDERS.find(([name]) => name === folder)?.[1];
  const shown = plainText(detail).slice(0, MAX_DETAIL);
  return words === undefined ? `What was found: ${shown}.` : `In it: ${words}, ${shown}.`;
}

/** What cannot go into a bundle: "a photo, photos/3f….jpg: its bytes are not on this phone". */
export function leftOutLine({ what, reason }: { what: string; reason: 'badEntry' | 'missing' | 'damaged' }): string {
  const folder = what.split('/')[0];
  const words = FOLDERS.find(([name]) => name === folder)?.[1] ?? 'an entry';
  return `${words}, ${what}: ${LEFT_OUT_REASONS[reason]}`;
}

const LEFT_OUT_REASONS = {
  badEntry: 'not as Underlid writes it',
  missing: 'not on this phone',
  damaged: 'damaged on this phone',
};

const CHARACTERS: Readonly<Record<string, string>> = {
  'U+202A': 'left-to-right embedding',
  'U+202B': 'right-to-left embedding',
  'U+202C': 'end of a direction',
  'U+202D': 'left-to-right override',
  'U+202E': 'right-to-left override',
  'U+2066': 'left-to-right isolate',
  'U+2067': 'right-to-left isolate',
  'U+2068': 'first-strong isolate',
  'U+2069': 'end of an isolate',
  'U+FEFF': 'byte order mark',
};

/** "U+202E (right-to-left override)". */
export function hiddenCharacterName(character: string): string {
  const isControl = /^U\+00/.test(character);
  return `${character} (${CHARACTERS[character] ?? (isControl ? 'control character' : 'annotation mark')})`;
}
