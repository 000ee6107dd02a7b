import * as v from 'valibot';
import { ENTRY_SUBJECTS, type Entry, entrySchema, type Subject } from './entry.ts';
import { ENTRY_LIMITS, whyNotPlainJson } from './plain-json.ts';

/** `known: false`: a subject or part of a newer version; kept and passed on, but not folded into a record. */
export type EntryCheck = { ok: true; entry: Entry; known: boolean } | { ok: false; reason: string };

type ValueSchema = v.GenericSchema<unknown>;

/**
 * Checks one entry as it comes from storage or a bundle: its shape, its key, and its value by subject and part.
 * A tombstone must hold null. The entry is handed back as it came, unknown fields included.
 */
export function checkEntry(input: unknown): EntryCheck {
  const unsafe = whyNotPlainJson(input, ENTRY_LIMITS);
  if (unsafe !== null) return { ok: false, reason: unsafe };
  const shape = v.safeParse(entrySchema, input);
  if (!shape.success) return { ok: false, reason: reasonOf(shape.issues) };
  const entry = input as Entry;
  const [, subject, part] = entry.key;
  if (entry.gone && entry.v !== null) return { ok: false, reason: 'a deleted entry must hold null' };
  if (!isSubject(subject)) return { ok: true, entry, known: false };

  const found = valueSchemaOf(subject, part);
  if (found === 'unknownPart') return { ok: true, entry, known: false };
  if (found === 'badPart') return { ok: false, reason: `"${part}" is not a part of ${subject}` };
  if (entry.gone) return { ok: true, entry, known: true };
  // valibot takes a list for an object without fields.
  if (Array.isArray(entry.v)) return { ok: false, reason: 'no value is a list' };
  const value = v.safeParse(found, entry.v);
  return value.success ? { ok: true, entry, known: true } : { ok: false, reason: reasonOf(value.issues) };
}

function isSubject(subject: string): subject is Subject {
  return Object.hasOwn(ENTRY_SUBJECTS, subject);
}

function valueSchemaOf(subject: Subject, part: string): ValueSchema | 'unknownPart' | 'badPart' {
  const rule = ENTRY_SUBJECTS[subject];
  if ('byPart' in rule) {
    const byPart: Readonly<Record<string, ValueSchema>> = rule.byPart;
    return (Object.hasOwn(byPart, part) ? byPart[part] : undefined) ?? 'unknownPart';
  }
  return v.is(rule.part, part) ? rule.value : 'badPart';
}

function reasonOf(issues: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]]): string {
  const [first] = issues;
  const where = v.getDotPath(first);
  return where === null ? first.message : `${where}: ${first.message}`;
}
