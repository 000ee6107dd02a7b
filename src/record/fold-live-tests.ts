import type { Entry, Subject } from '../schema/entry.ts';
import type { LiveTests, Named } from '../schema/live-tests/live-tests.ts';

type Member<T> = T & { number: number };
type Fold<K extends keyof LiveTests> = LiveTests[K];

/** The live tests among the live entries of one pack. Every value has passed the schema of its subject. */
export function foldLiveTests(live: readonly Entry[]): LiveTests {
  return {
    instruments: inOrder<Fold<'instruments'>[number]>(live, 'instrument'),
    runs: inOrder<Fold<'runs'>[number]>(live, 'run'),
    logs: inOrder<Fold<'logs'>[number]>(live, 'log'),
    trips: inOrder<Fold<'trips'>[number]>(live, 'trip'),
    cutOffs: inOrder<Fold<'cutOffs'>[number]>(live, 'cutOff'),
    sensorGates: gatesInOrder(live),
    cellSets: withMembers<Fold<'cellSets'>[number]>(live, { set: 'cellSet', member: 'cell', as: 'cells' }),
    resistances: inOrder<Fold<'resistances'>[number]>(live, 'resistance'),
    leads: inOrder<Fold<'leads'>[number]>(live, 'lead'),
    joints: inOrder<Fold<'joints'>[number]>(live, 'joint'),
    drains: inOrder<Fold<'drains'>[number]>(live, 'drain'),
    parallelRuns: withMembers<Fold<'parallelRuns'>[number]>(live, {
      set: 'parallelRun',
      member: 'parallelShare',
      as: 'shares',
    }),
    readOuts: inOrder<Fold<'readOuts'>[number]>(live, 'readOut'),
    cellMarks: inOrder<Fold<'cellMarks'>[number]>(live, 'cellMark'),
    rulers: inOrder<Fold<'rulers'>[number]>(live, 'ruler'),
  };
}

/** A record without any live test. */
export const NO_LIVE_TESTS: LiveTests = foldLiveTests([]);

/** By the stamp under which each was made; equal ones by id, so that every device has the same order. */
function inOrder<T extends Named<{ made: string }>>(live: readonly Entry[], subject: Subject): T[] {
  const found = live.filter(({ key }) => key[1] === subject).map((entry) => named(entry) as T);
  return found.sort((a, b) => compare(a.made, b.made) || compare(a.id, b.id));
}

/** An entry never changes once made, so what it is folded to is the same object each time. */
const folded = new WeakMap<Entry, object>();

function named(entry: Entry): object {
  const known = folded.get(entry);
  if (known) return known;
  const made = { ...(entry.v as object), id: entry.key[2] };
  folded.set(entry, made);
  return made;
}

function withMembers<T extends Named<{ made: string }>>(
  live: readonly Entry[],
  { set, member, as }: { set: Subject; member: Subject; as: string },
): T[] {
  const bySet = new Map<string, Member<object>[]>();
  for (const { key, v } of live) {
    if (key[1] !== member) continue;
    const [setId = '', number = ''] = key[2].split('/');
    const members = bySet.get(setId) ?? [];
    members.push({ ...(v as object), number: Number(number) });
    bySet.set(setId, members);
  }
  // Members of a set that is gone, or has not come yet, are left alone.
  return inOrder<T>(live, set).map((one) => ({
    ...one,
    [as]: (bySet.get(one.id) ?? []).sort((a, b) => a.number - b.number),
  }));
}

function gatesInOrder(live: readonly Entry[]): LiveTests['sensorGates'] {
  const gates = live.filter(({ key }) => key[1] === 'sensorGate').map(({ v }) => v as LiveTests['sensorGates'][number]);
  return gates.sort((a, b) => a.passedAtMs - b.passedAtMs);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
