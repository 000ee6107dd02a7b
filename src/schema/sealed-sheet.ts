import * as v from 'valibot';
import type { Checklist } from './checklist.ts';
import { type DefinitionReference, definitionReferenceSchema } from './definition-reference.ts';
import type { Entry } from './entry.ts';
import { momentMs } from './figure-limits.ts';
import { finiteSchema, lineSchema, noteSchema, sha256Schema } from './text-limits.ts';

/** Name at the head of every sealed sheet, so that another file is told apart at once. */
export const SEALED_FORMAT = 'underlid-sealed-sheet';

/** Larger files are not read. Our choice: a whole record with 20 logged runs is below 2 MB. */
export const MAX_SEALED_BYTES = 16 * 1024 * 1024;
/** Our choice: a record has some hundred entries, and a whole grading with live tests some thousand figures. */
const MAX_ENTRIES = 10_000;
const MAX_FIGURES = 100_000;

/** What one line of a sealed sheet says: a number at full precision, or a word of judgement. */
export type SealedFigure = number | string | boolean | null;
/** By readable path, e.g. `zones/vents/build/low`. */
export type SealedFigures = Readonly<Record<string, SealedFigure>>;

/**
 * A closed sheet as one JSON value. Its file is the RFC 8785 text of it, and the SHA-256 printed on the sheet is of
 * those bytes. Definitions are sealed with their defaults filled in, so that a later default cannot change them.
 */
export interface SealedSheet {
  format: typeof SEALED_FORMAT;
  schemaVersion: number;
  appVersion: string;
  revision: number;
  closedAtMs: number;
  reason?: string;
  /** SHA-256 of the sealed JSON it takes the place of. */
  after?: string;
  checklist: DefinitionReference;
  definition: Checklist;
  /** What it was graded by before it was carried over. */
  earlier?: { checklist: DefinitionReference; definition: Checklist };
  /** Sorted by key, none of AROUND_THE_SHEET. */
  entries: Entry[];
  figures: SealedFigures;
}

const definitionSchema = v.looseObject({ id: v.string(), version: v.string() });

/**
 * The shape of a sealed sheet as it is read from a file: strict, so that nothing rides along that no recheck covers.
 * Definitions and entries are looked at only from outside; checkDefinition and checkEntry say the rest.
 */
export const sealedSheetSchema = v.strictObject({
  format: v.literal(SEALED_FORMAT),
  schemaVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  appVersion: lineSchema,
  revision: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(9999)),
  closedAtMs: momentMs,
  reason: v.optional(noteSchema),
  after: v.optional(sha256Schema),
  checklist: definitionReferenceSchema,
  definition: definitionSchema,
  earlier: v.optional(v.strictObject({ checklist: definitionReferenceSchema, definition: definitionSchema })),
  entries: v.pipe(v.array(v.unknown()), v.minLength(1), v.maxLength(MAX_ENTRIES)),
  figures: v.pipe(
    v.record(
      v.pipe(v.string(), v.minLength(1), v.maxLength(400)),
      v.nullable(v.union([finiteSchema, v.pipe(v.string(), v.maxLength(40_000)), v.boolean()])),
    ),
    v.check((figures) => Object.keys(figures).length <= MAX_FIGURES, `has more than ${MAX_FIGURES} lines`),
  ),
});
/** As read from a file: definition and entries are still unchecked. */
export type ReadSealedSheet = v.InferOutput<typeof sealedSheetSchema>;
