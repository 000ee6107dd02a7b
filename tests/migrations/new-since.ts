import type { PackRecord } from '../../src/record/pack-record.ts';

/** What a record of version 2 could not have: by hand. */
const NEW_IN_3 = {
  retestOf: null,
  closings: [],
  reopenings: [],
  attachments: [],
  sheet: { now: 'open' },
} as const satisfies Partial<PackRecord>;

/** What a record of version 1 could not have either. */
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

/** By version: what its records gain, empty, when they are folded today. */
export const NEW_SINCE: Readonly<Record<number, object>> = { 1: { ...NEW_IN_2, ...NEW_IN_3 }, 2: NEW_IN_3 };
