import * as v from 'valibot';
import { randomIdSchema, sha256Schema } from '../text-limits.ts';
import { type CellMark, cellMarkSchema } from './cell-mark.ts';
import { type CellReading, type CellSet, cellReadingSchema, cellSetSchema } from './cell-set.ts';
import { type CutOff, cutOffSchema, type SensorGate, sensorGateSchema } from './cut-off.ts';
import { type Drain, drainSchema } from './drain.ts';
import { type Instrument, instrumentSchema } from './instrument.ts';
import { type Joint, jointSchema } from './joint.ts';
import { type Lead, leadSchema } from './lead.ts';
import { type ParallelRun, type ParallelShare, parallelRunSchema, parallelShareSchema } from './parallel-run.ts';
import { type ReadOut, readOutSchema } from './read-out.ts';
import { type Resistance, resistanceSchema } from './resistance.ts';
import { type Ruler, rulerSchema } from './ruler.ts';
import { type Log, logSchema, type Run, runSchema } from './run.ts';
import { type Trip, tripSchema } from './trip.ts';

/** `<id>/<number>`: one of several that belong to a set, up to as many cells as a nameplate may give. */
const numbered = v.pipe(v.string(), v.regex(/^[0-9a-f]{32}\/([1-9]\d{0,2}|1000)$/));

/** Entry subjects of the live tests: one entry per test, cell or share. */
export const LIVE_TEST_SUBJECTS = {
  instrument: { part: randomIdSchema, value: instrumentSchema },
  run: { part: randomIdSchema, value: runSchema },
  log: { part: sha256Schema, value: logSchema },
  trip: { part: randomIdSchema, value: tripSchema },
  cutOff: { part: randomIdSchema, value: cutOffSchema },
  sensorGate: { part: randomIdSchema, value: sensorGateSchema },
  cellSet: { part: randomIdSchema, value: cellSetSchema },
  cell: { part: numbered, value: cellReadingSchema },
  resistance: { part: randomIdSchema, value: resistanceSchema },
  lead: { part: randomIdSchema, value: leadSchema },
  joint: { part: randomIdSchema, value: jointSchema },
  drain: { part: randomIdSchema, value: drainSchema },
  parallelRun: { part: randomIdSchema, value: parallelRunSchema },
  parallelShare: { part: numbered, value: parallelShareSchema },
  readOut: { part: randomIdSchema, value: readOutSchema },
  cellMark: { part: randomIdSchema, value: cellMarkSchema },
  ruler: { part: randomIdSchema, value: rulerSchema },
} as const;
export type LiveTestSubject = keyof typeof LIVE_TEST_SUBJECTS;

export type Named<T> = T & { id: string };

/** The live tests of one record as folded: each kind in the order in which its tests were made. */
export interface LiveTests {
  instruments: readonly Named<Instrument>[];
  runs: readonly Named<Run>[];
  logs: readonly Named<Log>[];
  trips: readonly Named<Trip>[];
  cutOffs: readonly Named<CutOff>[];
  /** In the order in which they were passed. */
  sensorGates: readonly SensorGate[];
  /** With the readings of each cell by its number, in order of number. */
  cellSets: readonly (Named<CellSet> & { cells: readonly (CellReading & { number: number })[] })[];
  resistances: readonly Named<Resistance>[];
  leads: readonly Named<Lead>[];
  joints: readonly Named<Joint>[];
  drains: readonly Named<Drain>[];
  parallelRuns: readonly (Named<ParallelRun> & { shares: readonly (ParallelShare & { number: number })[] })[];
  readOuts: readonly Named<ReadOut>[];
  cellMarks: readonly Named<CellMark>[];
  rulers: readonly Named<Ruler>[];
}
