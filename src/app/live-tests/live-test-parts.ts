import { CellGrid } from './cells/cell-grid.tsx';
import { codePart } from './codes/code-part.tsx';
import { cellsKind } from './kinds/cells.ts';
import { cutOffKind } from './kinds/cut-off.ts';
import { drainKind } from './kinds/drain.ts';
import { instrumentKind } from './kinds/instrument.ts';
import { jointKind } from './kinds/joint.ts';
import { leadKind } from './kinds/lead.ts';
import { parallelKind } from './kinds/parallel.ts';
import { readOutKind } from './kinds/read-out.ts';
import { resistanceKind } from './kinds/resistance.ts';
import { sensorKind } from './kinds/sensor.ts';
import { tripKind } from './kinds/trip.ts';
import { readLiveTestAddress } from './live-test-address.ts';
import type { LiveTestPart } from './live-test-part.ts';
import { oneByOne } from './one-by-one.tsx';
import { MeasureLead } from './ruler/measure-lead.tsx';
import { rulerPart } from './ruler/ruler-part.ts';
import { logPart } from './runs/log-part.ts';
import { runPart } from './runs/run-part.tsx';
import { SensorOhms } from './sensor-ohms/sensor-ohms.tsx';
import { ShareRows } from './shares/share-rows.tsx';

/** Every kind of live test, in the order in which they are listed. */
export const LIVE_TEST_PARTS: readonly LiveTestPart[] = [
  runPart,
  logPart,
  oneByOne(tripKind),
  oneByOne(cutOffKind),
  oneByOne({ ...cellsKind, Below: CellGrid }),
  oneByOne(resistanceKind),
  oneByOne({ ...leadKind, Below: MeasureLead, BelowList: MeasureLead }),
  rulerPart,
  oneByOne(jointKind),
  oneByOne(drainKind),
  oneByOne({ ...parallelKind, Below: ShareRows }),
  oneByOne(readOutKind),
  codePart,
  oneByOne(instrumentKind),
  oneByOne({ ...sensorKind, BelowList: SensorOhms }, 'sensors'),
];

/** The part that an address names, and the test in it. Null if there is no such place. */
export function liveTestAt(text: string): { part: LiveTestPart; testId: string } | null {
  const address = readLiveTestAddress(text);
  const part = LIVE_TEST_PARTS.find(({ id }) => id === address?.partId);
  return part && address ? { part, testId: address.testId } : null;
}
