import type { Answer } from '../schema/answer.ts';
import { checkEntry, type EntryCheck } from '../schema/check-entry.ts';
import type { RetestOf } from '../schema/closing.ts';
import type { DefinitionReference } from '../schema/definition-reference.ts';
import type { Entry, Subject } from '../schema/entry.ts';
import type { MakeSafe } from '../schema/make-safe.ts';
import { LID_OFF_STATES, type LidOffState, type Route } from '../schema/pack-states.ts';
import { foldBeside } from './fold-beside.ts';
import { foldClosings } from './fold-closings.ts';
import { foldLiveTests } from './fold-live-tests.ts';
import { foldPhotos } from './fold-photos.ts';
import { keyText, mergeEntries } from './merge-entries.ts';
import type { PackRecord } from './pack-record.ts';
import { isOfTheSheet } from './sealed-entries.ts';

/**
 * The record of one pack as its entries say it stands. Entries of other packs are passed over, of two under one key the
 * newer counts. A value that does not pass the schema is set aside with the reason; a subject or part this version does
 * not know is left alone. A pack without a route asks the whole one, so that nothing is hidden.
 */
export function foldRecord(packId: string, entries: readonly Entry[]): PackRecord {
  const setAside: PackRecord['setAside'] = [];
  const live: Entry[] = [];
  let newestAt: string | null = null;
  let sheetAt: string | null = null;
  for (const entry of newestOfPack(packId, entries)) {
    const check = checkedOnce(entry);
    if (!check.ok) {
      setAside.push({ key: keyText(entry.key), reason: check.reason });
      continue;
    }
    if (newestAt === null || entry.at > newestAt) newestAt = entry.at;
    if (isOfTheSheet(entry.key) && (sheetAt === null || entry.at > sheetAt)) sheetAt = entry.at;
    if (check.known && !entry.gone) live.push(entry);
  }

  const made = valueAt<{ demo?: boolean; away?: boolean }>(live, 'pack', 'made');
  const states = fieldsOf<PackRecord['states']>(live, 'state');
  return {
    packId,
    here: made !== undefined && made.away !== true,
    demo: made?.demo === true,
    checklist: valueAt<DefinitionReference>(live, 'pack', 'checklist') ?? null,
    carriedFrom: valueAt<DefinitionReference>(live, 'pack', 'carriedFrom') ?? null,
    retestOf: valueAt<RetestOf>(live, 'pack', 'retestOf') ?? null,
    route: valueAt<Route>(live, 'pack', 'route') ?? 'whole',
    keepOriginals: valueAt<boolean>(live, 'pack', 'keepOriginals') ?? false,
    nameplate: fieldsOf<PackRecord['nameplate']>(live, 'nameplate'),
    answers: byPart<Answer, Answer>(live, 'answer', (answer) => answer),
    facts: byPart<{ choice: string }, string>(live, 'fact', (fact) => fact.choice),
    photos: foldPhotos(live),
    tests: foldLiveTests(live),
    makeSafe: makeSafeInOrder(live),
    states,
    state: furthestOf(states),
    afterwards: fieldsOf<PackRecord['afterwards']>(live, 'afterwards'),
    words: fieldsOf<PackRecord['words']>(live, 'words'),
    ...foldClosings(live),
    ...foldBeside(live),
    newestAt,
    sheetAt,
    setAside,
  };
}

/** Entries are never changed once made, and checking them is most of a fold: each is checked the first time it is seen. */
const checks = new WeakMap<Entry, EntryCheck>();

function checkedOnce(entry: Entry): EntryCheck {
  const known = checks.get(entry);
  if (known) return known;
  const check = checkEntry(entry);
  checks.set(entry, check);
  return check;
}

function newestOfPack(packId: string, entries: readonly Entry[]): Entry[] {
  return mergeEntries(
    entries.filter((entry) => entry.key[0] === packId),
    [],
  );
}

// The casts below rest on checkEntry: every live entry's value has passed the schema of its subject and part.

function valueAt<T>(live: readonly Entry[], subject: Subject, part: string): T | undefined {
  return live.find(({ key }) => key[1] === subject && key[2] === part)?.v as T | undefined;
}

/** Subjects whose parts are a closed list become an object with those that are there. */
function fieldsOf<T extends object>(live: readonly Entry[], subject: Subject): T {
  const found = live.filter(({ key }) => key[1] === subject).map(({ key, v }) => [key[2], v] as const);
  return Object.fromEntries(found) as T;
}

/** Without a prototype: an item may well be called "constructor". */
function byPart<V, T>(live: readonly Entry[], subject: Subject, take: (value: V) => T): Record<string, T> {
  const result: Record<string, T> = Object.create(null);
  for (const { key, v } of live) {
    if (key[1] === subject) result[key[2]] = take(v as V);
  }
  return result;
}

function makeSafeInOrder(live: readonly Entry[]): MakeSafe[] {
  const passes = live.filter(({ key }) => key[1] === 'makeSafe').map(({ v }) => v as MakeSafe);
  return passes.sort((a, b) => a.passedAtMs - b.passedAtMs);
}

function furthestOf(states: PackRecord['states']): LidOffState | null {
  return LID_OFF_STATES.findLast((state) => states[state] !== undefined) ?? null;
}
