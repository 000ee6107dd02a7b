import type { BundleRefusal } from '../schema/bundle.ts';

/** Why a backup file was not taken in, and what to do. In every case nothing on the phone was changed. */
export const bundleRefusals: Readonly<Record<BundleRefusal, string>> = {
  notAZip: 'This file is not a zip. Choose a backup that Underlid saved; its name begins with “underlid-”.',
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
  badDefinition: 'A checklist in this backup is not the one it says. It was changed since Underlid saved it.',
  migrationFailed: 'This older backup could not be brought up to date. Keep it, and report this with its detail.',
};

/** Said under every refusal. */
export const nothingChanged = 'Nothing on this phone was changed.';
