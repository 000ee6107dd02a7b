import * as v from 'valibot';
import { foldRecord } from '../../../record/fold-record.ts';
import { keyText, mergeEntries } from '../../../record/merge-entries.ts';
import type { PackRecord } from '../../../record/pack-record.ts';
import { isAroundTheSheet } from '../../../record/sealed-entries.ts';
import { checkDefinition } from '../../../schema/check-definition.ts';
import { checkEntry } from '../../../schema/check-entry.ts';
import type { Checklist } from '../../../schema/checklist.ts';
import type { DefinitionReference } from '../../../schema/definition-reference.ts';
import type { Entry } from '../../../schema/entry.ts';
import { whyNotPlainJson } from '../../../schema/plain-json.ts';
import { hasRepeatedNames } from '../../../schema/repeated-names.ts';
import { SCHEMA_VERSION } from '../../../schema/schema-version.ts';
import {
  MAX_SEALED_BYTES,
  type ReadSealedSheet,
  SEALED_FORMAT,
  sealedSheetSchema,
} from '../../../schema/sealed-sheet.ts';

/** Lifts an entry of an older schema version to the present one (migrations/lift-entry.ts). */
export type LiftEntry = (
  entry: Entry,
  from: number,
) => { ok: true; entry: Entry } | { ok: false; problem: 'newer' | 'failed'; detail: string };

/** Which part of the file is at fault, the place in it and the reason. */
export interface Damage {
  outcome: 'damaged';
  part: 'json' | 'shape' | 'definition' | 'earlier' | 'entries';
  place: string;
  reason: string;
}
export type SealedRefusal = { outcome: 'tooLarge' } | { outcome: 'notOurs' } | { outcome: 'newer' } | Damage;

export interface SealedContent {
  outcome: 'read';
  sealed: ReadSealedSheet;
  /** The value as parsed, for its canonical text. */
  value: unknown;
  definition: Checklist;
  earlier: Checklist | null;
  record: PackRecord;
}

/**
 * A sealed sheet as read from the text of a file, with everything in it checked; or why it is refused. Entries of an
 * older schema are lifted; a file of a newer one is left alone.
 */
export function readSealed(text: string, liftEntry: LiftEntry): SealedContent | SealedRefusal {
  if (text.length > MAX_SEALED_BYTES) return { outcome: 'tooLarge' };
  const parsed = parsedJson(text);
  if (!parsed.ok) return damaged('json', '', parsed.reason);
  const { value } = parsed;
  if (!isOurs(value)) return { outcome: 'notOurs' };
  if (typeof value.schemaVersion === 'number' && value.schemaVersion > SCHEMA_VERSION) return { outcome: 'newer' };
  const unsafe = whyNotPlainJson(value);
  if (unsafe !== null) return damaged('shape', '', unsafe);
  if (hasRepeatedNames(text, value)) return damaged('shape', '', 'a name stands twice in one of its objects');
  const shape = v.safeParse(sealedSheetSchema, value);
  if (!shape.success) return damaged('shape', v.getDotPath(shape.issues[0]) ?? '', shape.issues[0].message);

  const sealed = shape.output;
  const definition = checkedDefinition('definition', sealed);
  if ('outcome' in definition) return definition;
  const earlier = sealed.earlier === undefined ? null : checkedDefinition('earlier', sealed.earlier);
  if (earlier !== null && 'outcome' in earlier) return earlier;
  const entries = checkedEntries(sealed, liftEntry);
  if ('outcome' in entries) return entries;

  const record = foldRecord(entries[0]?.key[0] ?? '', entries);
  const names = [
    ['definition', record.checklist, sealed.checklist],
    ['earlier', record.carriedFrom, sealed.earlier?.checklist ?? null],
  ] as const;
  for (const [part, named, given] of names) {
    if (given !== null && !isSameReference(named, given)) {
      return damaged(part, '', 'its entries name another checklist than the one in it');
    }
  }
  return { outcome: 'read', sealed, value, definition, earlier, record };
}

function parsedJson(text: string): { ok: true; value: unknown } | { ok: false; reason: string } {
  try {
    // A byte order mark is a trace of the editor that laid the file out anew.
    return { ok: true, value: JSON.parse(text.replace(/^\ufeff/, '')) };
  } catch (error) {
    return { ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
}

function isOurs(value: unknown): value is { format: string; schemaVersion?: unknown } {
  return typeof value === 'object' && value !== null && 'format' in value && value.format === SEALED_FORMAT;
}

function checkedDefinition(
  part: 'definition' | 'earlier',
  { checklist, definition }: { checklist: DefinitionReference; definition: unknown },
): Checklist | Damage {
  const checked = checkDefinition(definition);
  if (!checked.ok) return damaged(part, checked.problems[0]?.place ?? '', checked.problems[0]?.reason ?? '');
  const { id, version } = checked.definition;
  if (id !== checklist.id || version !== checklist.version) {
    return damaged(part, '', `it is ${id} ${version}, and the sheet names ${checklist.id} ${checklist.version}`);
  }
  return checked.definition;
}

function checkedEntries({ entries, schemaVersion }: ReadSealedSheet, liftEntry: LiftEntry): Entry[] | Damage {
  const taken: Entry[] = [];
  for (const [place, raw] of entries.entries()) {
    const asWritten = checkShape(raw);
    if (asWritten === null) return damaged('entries', `entry ${place + 1}`, 'it has no key');
    const where = keyText(asWritten.key);
    const lifted = liftEntry(asWritten, schemaVersion);
    if (!lifted.ok) return damaged('entries', where, lifted.detail);
    const check = checkEntry(lifted.entry);
    if (!check.ok) return damaged('entries', where, check.reason);
    if (isAroundTheSheet(check.entry.key)) return damaged('entries', where, 'it speaks of a sheet as closed');
    if (check.entry.key[0] !== (taken[0] ?? check.entry).key[0])
      return damaged('entries', where, 'it is of another pack');
    taken.push(check.entry);
  }
  const inOrder = mergeEntries(taken, []);
  const astray = taken.find(({ key }, place) => keyText(key) !== keyText(inOrder[place]?.key ?? ['', '', '']));
  return astray === undefined ? taken : damaged('entries', keyText(astray.key), 'it is out of order, or there twice');
}

/** Only as far as a migration needs it; checkEntry says the rest of the lifted one. */
function checkShape(raw: unknown): Entry | null {
  const hasKey =
    typeof raw === 'object' &&
    raw !== null &&
    'key' in raw &&
    Array.isArray(raw.key) &&
    raw.key.length === 3 &&
    raw.key.every((part) => typeof part === 'string');
  return hasKey ? (raw as Entry) : null;
}

function isSameReference(one: DefinitionReference | null, other: DefinitionReference): boolean {
  return one !== null && one.id === other.id && one.version === other.version && one.sha256 === other.sha256;
}

function damaged(part: Damage['part'], place: string, reason: string): Damage {
  return { outcome: 'damaged', part, place, reason };
}
