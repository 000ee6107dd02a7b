import type { PendingChange } from './state/pack-session.ts';

/** What a change was, for the person to read and to copy: its name, then the words and figures in it. */
export function unsavedLines(changes: readonly PendingChange[]): string[] {
  return changes.map(({ undoLabel, puts }) => {
    const texts = puts.flatMap((put) => ('gone' in put ? [] : wordsIn(put.v)));
    const name = undoLabel ?? [...new Set(puts.map(({ subject }) => subject))].join(', ');
    const rest = texts.filter((text) => !name.includes(text));
    return rest.length === 0 ? name : `${name}: ${rest.join(' · ')}`;
  });
}

/** Members in which a person's own words and figures stand; the rest is ids, stamps and choices that the name says. */
const OWN_WORDS = ['text', 'note', 'reason', 'because', 'caption', 'value', 'label'];

function wordsIn(value: unknown): string[] {
  if (typeof value === 'string' || typeof value === 'number') return [String(value)];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, member]) => {
    if (typeof member === 'number' && !/(Ms|Px|Count)$/.test(name)) return [`${name} ${member}`];
    return OWN_WORDS.includes(name) ? wordsIn(member) : [];
  });
}
