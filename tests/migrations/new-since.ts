import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Entry } from '../../src/schema/entry.ts';

/** What a record of version 3 could not have: by hand. */
const NEW_IN_4 = {
  offers: [],
  remedyNotes: {},
  takes: [],
  secondReaders: [],
  voices: [],
} as const satisfies Partial<PackRecord>;

/** What a record of version 2 could not have either. */
const NEW_IN_3 = {
  retestOf: null,
  closings: [],
  reopenings: [],
  attachments: [],
  sheet: { now: 'open' },
} as const satisfies Partial<PackRecord>;

/** And what one of version 1 could not. */
const NEW_IN_2 = {
  carriedFrom: null,
  tests: {
    instruments: [],
    runs: [],
    logs: [],
    trips: [],
    cutOffs: [],
    sensorGates: [],
    cellSets: [],
    resistances: [],
    leads: [],
    joints: [],
    drains: [],
    parallelRuns: [],
    readOuts: [],
    cellMarks: [],
    rulers: [],
  },
} as const satisfies Partial<PackRecord>;

const NEW_SINCE: Readonly<Record<number, object>> = {
  1: { ...NEW_IN_2, ...NEW_IN_3, ...NEW_IN_4 },
  2: { ...NEW_IN_3, ...NEW_IN_4 },
  3: NEW_IN_4,
};

/**
 * What a record of an earlier version gains when it is folded today: what is new is empty, but for what dates its sheet,
 * which no record had before version 3.
 */
export function newSince(version: number, packId: string, entries: readonly Entry[]): object {
  if (version >= 3) return NEW_SINCE[version] ?? {};
  const dating = entries.filter(({ key }) => key[0] === packId && !(key[1] === 'pack' && key[2] === 'made'));
  return { ...NEW_SINCE[version], sheetAt: dating.map(({ at }) => at).sort().at(-1) }; // biome-ignore format: one line
}
