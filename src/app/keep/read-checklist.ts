import { checkDefinition } from '../../schema/check-definition.ts';
import type { Checklist } from '../../schema/checklist.ts';
import { plainText } from '../../schema/plain-text.ts';
import { maxBytesOf } from '../../storage/bundle/bundle-limits.ts';
import { placeInWords, checklistsWords as say } from '../../text/checklists.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { whereInJson } from './where-in-json.ts';

export interface ProblemLine {
  place: string;
  reason: string;
}
export type ReadChecklist =
  | { ok: true; definition: Checklist; text: string }
  | { ok: false; sentence: string; lines: ProblemLine[]; more: number };

/** What a bundle can carry, so that whatever is loaded can be backed up. */
const MAX_BYTES = maxBytesOf({ kind: 'definitions', sha256: '' });
/** Our choice: about two screens of a phone; whoever has mended so many checks again. */
const MOST_LINES = 20;
/** Characters shown of the line at which a file stops being JSON, before and after the place. Our choice. */
const AROUND = 24;

/** Reads a checklist file whole and says everything that is wrong in it. Nothing is written. */
export function readChecklist(bytes: ArrayBuffer): ReadChecklist {
  if (bytes.byteLength > MAX_BYTES) return refused(say.reasons.tooLarge(formatBytes(MAX_BYTES)));
  if (bytes.byteLength === 0) return refused(say.reasons.empty);
  const text = utf8(bytes);
  if (text === null) return refused(say.reasons.notText);
  if (text.startsWith('\uFEFF')) return refused(say.reasons.byteOrderMark);
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (error) {
    return refused(say.reasons.notJson, [jsonLine(text, error)]);
  }
  const verdict = checkDefinition(parsed);
  if (verdict.ok) return { ok: true, definition: verdict.definition, text };
  const { problems } = verdict;
  const lines = problems.slice(0, MOST_LINES).map(({ place, reason }) => ({
    place: placeInWords(plainText(place), (list, index) => idIn(parsed, list, index)),
    reason: plainText(reason).slice(0, 300),
  }));
  return refused(say.reasons.problems(problems.length), lines, problems.length - lines.length);
}

export function tooLarge(byteCount: number): ReadChecklist | null {
  return byteCount > MAX_BYTES ? refused(say.reasons.tooLarge(formatBytes(MAX_BYTES))) : null;
}

function refused(sentence: string, lines: ProblemLine[] = [], more = 0): ReadChecklist {
  return { ok: false, sentence, lines, more };
}

function jsonLine(text: string, error: unknown): ProblemLine {
  const where = whereInJson(text, error instanceof Error ? error.message : '');
  if (where === null) return { place: say.noLine, reason: '' };
  const { line, column } = where;
  const words = text.split('\n')[line - 1] ?? '';
  const from = Math.max(0, column - 1 - AROUND);
  return { place: say.atLine(line, column), reason: plainText(words.slice(from, column - 1 + AROUND)).trim() };
}

/** A BOM stays, so that it can be told; null for what is not UTF-8. */
function utf8(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}

/** The id of a member of one of the definition's lists, if it has one that can be shown. */
function idIn(parsed: unknown, list: string, index: number): string | null {
  if (typeof parsed !== 'object' || parsed === null) return null;
  const members: unknown = new Map<string, unknown>(Object.entries(parsed)).get(list);
  const member: unknown = Array.isArray(members) ? members[index] : null;
  if (typeof member !== 'object' || member === null || !('id' in member)) return null;
  const { id } = member;
  return typeof id === 'string' && /^[a-z0-9-]{1,60}$/.test(id) ? id : null;
}
