import type { Entry, Subject } from '../schema/entry.ts';
import type { Named } from '../schema/live-tests/live-tests.ts';
import type { Offer } from '../schema/offer.ts';
import type { RemedyNote } from '../schema/remedy-note.ts';
import type { SecondAnswer, SecondReader } from '../schema/second-reading.ts';
import type { Take, TakeMark } from '../schema/take.ts';
import type { VoiceNote } from '../schema/voice-note.ts';
import type { PackRecord } from './pack-record.ts';

/** What stands beside the findings: prices, what remedies take, takes, second readers, voices. Takes live, checked entries. */
export function foldBeside(
  live: readonly Entry[],
): Pick<PackRecord, 'offers' | 'remedyNotes' | 'takes' | 'secondReaders' | 'voices'> {
  const marks = membersOf<TakeMark>(live, 'takeMark');
  const answers = membersOf<SecondAnswer>(live, 'secondAnswer');
  return {
    offers: inOrder<Offer>(live, 'offer'),
    remedyNotes: withoutPrototype(
      live.filter(({ key }) => key[1] === 'remedyNote').map(({ key, v }) => [key[2], v as RemedyNote]),
    ),
    // Members of a take or a reader that is gone, or has not come yet, are left alone.
    takes: inOrder<Take>(live, 'take').map((take) => ({
      ...take,
      marks: (marks.get(take.id) ?? [])
        .map(([id, mark]) => ({ ...mark, id }))
        .sort((a, b) => a.atMs - b.atMs || compare(a.id, b.id)),
    })),
    secondReaders: inOrder<SecondReader>(live, 'secondReader').map((reader) => ({
      ...reader,
      answers: withoutPrototype(answers.get(reader.id) ?? []),
    })),
    voices: inOrder<VoiceNote>(live, 'voice'),
  };
}

function inOrder<T extends { made: string }>(live: readonly Entry[], subject: Subject): Named<T>[] {
  const found = live.filter(({ key }) => key[1] === subject).map(({ key, v }) => ({ ...(v as T), id: key[2] }));
  return found.sort((a, b) => compare(a.made, b.made) || compare(a.id, b.id));
}

/** Members by the id before the slash, each under what stands behind it. */
function membersOf<T>(live: readonly Entry[], subject: Subject): Map<string, [string, T][]> {
  const members = new Map<string, [string, T][]>();
  for (const { key, v } of live) {
    if (key[1] !== subject) continue;
    const [owner = '', id = ''] = key[2].split('/');
    members.set(owner, [...(members.get(owner) ?? []), [id, v as T]]);
  }
  return members;
}

/** An item may well be called "constructor". */
function withoutPrototype<T>(pairs: readonly (readonly [string, T])[]): Record<string, T> {
  const result: Record<string, T> = Object.create(null);
  for (const [name, value] of pairs) result[name] = value;
  return result;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
