import type { CellSet } from '../../../schema/live-tests/cell-set.ts';
import type { Instrument } from '../../../schema/live-tests/instrument.ts';
import type { LiveTestSubject } from '../../../schema/live-tests/live-tests.ts';
import type { Run } from '../../../schema/live-tests/run.ts';
import type { ModelPack, ModelRun } from './cell-model.ts';

type Plain<T> = Omit<T, 'made' | 'on' | 'instrumentId'>;

/** The live tests of one invented pack. Days count back from the moment it is laid out. */
export interface DemoTests {
  /** By a name of their own, which tests refer to. */
  instruments: Readonly<Record<string, Plain<Instrument>>>;
  /** Logs made by the cell model, each read as any log is. */
  logs: readonly DemoLog[];
  tests: readonly DemoTest[];
  cellSets: readonly DemoCellSet[];
}

interface When {
  daysAgo: number;
  instrument?: string;
}

export interface DemoLog extends When {
  fileName: string;
  title: string;
  pack: ModelPack;
  run: ModelRun;
  /** What a person adds to what the log says. */
  said: Partial<Run>;
}

export interface DemoTest extends When {
  subject: Exclude<LiveTestSubject, 'instrument' | 'run' | 'log' | 'cellSet' | 'cell' | 'sensorGate'>;
  v: object;
}

export interface DemoCellSet extends When {
  v: Plain<CellSet>;
  voltagesV: readonly number[];
  resistancesMohm?: readonly number[];
  bmsVoltagesV?: readonly number[];
}

/** A demo log after it has been read: what of it is stored. */
export interface ReadDemoLog {
  sha256: string;
  byteCount: number;
  rowCount: number;
  run: Omit<Run, 'made'>;
}
