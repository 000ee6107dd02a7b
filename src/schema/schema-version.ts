/**
 * Version of the stored shapes. Raise it with a step in src/migrations.
 * 2: live tests, answers of kind `readings`, `overrules`. A version-1 app would pass over the one and set the other
 * aside, so it has to refuse them whole.
 * 3: closed sheets, revisions, attachments, retests. A version-2 app would let a closed sheet be changed unseen.
 * 4: prices, remedies, takes, second readings, voice notes. A version-3 app would leave the voices out of its bundles.
 */
export const SCHEMA_VERSION = 4;
