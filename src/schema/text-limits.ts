import * as v from 'valibot';

/** Lengths are in UTF-16 units. Our choice: long enough for a paragraph, short enough for a phone and a sheet. */
export const MAX_LINE = 120;
export const MAX_NOTE = 2000;

export const idSchema = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'must be kebab-case'));
export const lineSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(MAX_LINE));
export const sentenceSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(400));
export const noteSchema = v.pipe(v.string(), v.maxLength(MAX_NOTE));
export const sha256Schema = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, 'must be 64 hexadecimal digits'));
/** A random 128-bit id, as 32 hexadecimal digits. */
export const randomIdSchema = v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/, 'must be 32 hexadecimal digits'));
/** A calendar day, ISO 8601, e.g. 2026-11-24. */
export const daySchema = v.pipe(v.string(), v.isoDate());
export const finiteSchema = v.pipe(v.number(), v.finite());
