import type { Put } from '../../../storage/store.ts';
import type { DemoTests, ReadDemoLog } from './demo-tests.ts';

export interface TestLayOut {
  /** One for each log, in their order. */
  logs: readonly ReadDemoLog[];
  /** An id of the pack's own for each number, the same each time. */
  idOf(number: number): string;
  dayBefore(days: number): string;
}

/** Numbers of ids: instruments, runs, other tests and rounds of cells each have a stretch of their own. */
const STRETCH = { instrument: 0x4000, run: 0x5000, test: 0x6000, cellSet: 0x7000 };

/** The live tests of an invented pack as entries to write. */
export function testEntries(demo: DemoTests, layOut: TestLayOut): Put[] {
  const names = Object.keys(demo.instruments);
  const instrumentId = (name: string) => layOut.idOf(STRETCH.instrument + names.indexOf(name));
  const when = ({ daysAgo, instrument }: { daysAgo: number; instrument?: string }) => ({
    on: layOut.dayBefore(daysAgo),
    ...(instrument !== undefined && { instrumentId: instrumentId(instrument) }),
    made: null,
  });
  return [
    ...Object.entries(demo.instruments).map(
      ([name, v]): Put => ({ subject: 'instrument', part: instrumentId(name), v: { ...v, made: null } }),
    ),
    ...demo.logs.flatMap((log, at): Put[] => {
      const read = layOut.logs[at];
      if (read === undefined) throw new RangeError(`testEntries: ${log.fileName} must have been read`);
      const { sha256, byteCount, rowCount, run } = read;
      return [
        { subject: 'log', part: sha256, v: { name: log.fileName, byteCount, rowCount, made: null } },
        { subject: 'run', part: layOut.idOf(STRETCH.run + at), v: { ...run, ...log.said, ...when(log) } },
      ];
    }),
    ...demo.tests.map(
      (test, at): Put => ({
        subject: test.subject,
        part: layOut.idOf(STRETCH.test + at),
        v: { ...test.v, ...when(test) },
      }),
    ),
    ...demo.cellSets.flatMap((set, at): Put[] => {
      const setId = layOut.idOf(STRETCH.cellSet + at);
      return [{ subject: 'cellSet', part: setId, v: { ...set.v, ...when(set) } }, ...cellEntries(setId, set)];
    }),
  ];
}

function cellEntries(setId: string, set: DemoTests['cellSets'][number]): Put[] {
  return set.voltagesV.map((voltageV, at) => {
    const resistanceMohm = set.resistancesMohm?.[at];
    const bmsVoltageV = set.bmsVoltagesV?.[at];
    const v = {
      voltageV,
      ...(resistanceMohm !== undefined && { resistanceMohm }),
      ...(bmsVoltageV !== undefined && { bmsVoltageV }),
    };
    return { subject: 'cell', part: `${setId}/${at + 1}`, v };
  });
}
