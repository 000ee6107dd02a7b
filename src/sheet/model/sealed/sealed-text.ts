import { canonicalJson } from '../../../record/canonical-json.ts';
import { foldRecord } from '../../../record/fold-record.ts';
import { sealedEntries } from '../../../record/sealed-entries.ts';
import type { Checklist } from '../../../schema/checklist.ts';
import type { DefinitionReference } from '../../../schema/definition-reference.ts';
import type { Entry } from '../../../schema/entry.ts';
import { SCHEMA_VERSION } from '../../../schema/schema-version.ts';
import { SEALED_FORMAT, type SealedSheet } from '../../../schema/sealed-sheet.ts';
import { figuresOf } from './figures-of.ts';

export interface SealInput {
  packId: string;
  /** Every entry of the pack as stored; what is no part of the seal is left out here. */
  entries: readonly Entry[];
  definition: Checklist;
  /** The definition it was graded by before it was carried over; null if it never was, or if that is not at hand. */
  earlier: Checklist | null;
  appVersion: string;
  revision: number;
  closedAtMs: number;
  /** Of a revision: why, and the SHA-256 of the sealed JSON it takes the place of. */
  revises?: { reason: string; after: string };
}

/**
 * The one text of a closed sheet. `sha256sum` of its UTF-8 bytes is what the sheet prints. The record is folded from
 * the entries themselves, so that text and figures cannot disagree.
 *
 * Throws  RangeError if the record names no checklist, or another than the definition given.
 * Source  RFC 8785 for the text; what is in it is ours
 * Check   tests/sheet/sealed/sealed-text.test.ts
 */
export function sealedText(input: SealInput): string {
  const { packId, definition, earlier, appVersion, revision, closedAtMs, revises } = input;
  const entries = sealedEntries(input.entries.filter(({ key }) => key[0] === packId));
  const record = foldRecord(packId, entries);
  const sealed: SealedSheet = {
    format: SEALED_FORMAT,
    schemaVersion: SCHEMA_VERSION,
    appVersion,
    revision,
    closedAtMs,
    ...revises,
    checklist: named(record.checklist, definition),
    definition,
    ...(earlier && { earlier: { checklist: named(record.carriedFrom, earlier), definition: earlier } }),
    entries,
    figures: figuresOf({ definition, earlier, record }),
  };
  return canonicalJson(sealed);
}

function named(reference: DefinitionReference | null, definition: Checklist): DefinitionReference {
  if (reference === null || reference.id !== definition.id || reference.version !== definition.version) {
    const found = reference === null ? 'none' : `${reference.id} ${reference.version}`;
    throw new RangeError(
      `sealedText: the record must name the checklist ${definition.id} ${definition.version}, got ${found}`,
    );
  }
  return reference;
}
