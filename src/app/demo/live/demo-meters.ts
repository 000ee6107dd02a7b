import { demoInstruments } from '../../../text/demo-tests.ts';
import type { DemoTests } from './demo-tests.ts';

/** What the invented tester measures with; accuracies as a data sheet might state them. */
export const DEMO_METERS: DemoTests['instruments'] = {
  bench: {
    name: demoInstruments.bench,
    voltageReadingPct: 0.1,
    voltageAbsoluteV: 0.01,
    currentReadingPct: 0.5,
    currentAbsoluteA: 0.05,
  },
  meter: { name: demoInstruments.meter, voltageReadingPct: 0.09, voltageAbsoluteV: 0.002 },
  milliohm: { name: demoInstruments.milliohm },
  clamp: { name: demoInstruments.clamp, currentReadingPct: 2, currentAbsoluteA: 0.5 },
};
