import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import type { LiveContext } from '../../../src/sheet/model/live-tests/live-context.ts';
import { stampAt } from '../hut-pack.ts';

/** Digit repeated: the id of a test, as short to write as it is to tell apart. */
export const idOf = (digit: string | number) => String(digit).repeat(32).slice(0, 32);
export const MADE = stampAt(0);

/** A pack of the trade: 12.8 V, 300 Ah, four cells, 200 A, for 400 money units. */
export const PACK_300: Nameplate = {
  name: 'Hut 300',
  nominalVoltageV: 12.8,
  ratedCapacityAh: 300,
  cellsInSeries: 4,
  continuousCurrentA: 200,
  chargeVoltageV: 14.4,
  price: 400,
};

export function contextOf(tests: Partial<LiveTests>, nameplate: Nameplate = PACK_300): LiveContext {
  return { nameplate, tests: { ...NO_LIVE_TESTS, ...tests }, units: 'metric', photos: [] };
}

type Run = LiveTests['runs'][number];

/** A run begun full: charged to 14.4 V until 5 A, rested for an hour. */
export function fullRun(digit: string | number, given: Omit<Partial<Run>, 'id' | 'made'>): Run {
  return { id: idOf(digit), made: MADE, chargedToV: 14.4, taperA: 5, restMin: 60, end: 'lowVoltage', ...given };
}

type Trip = LiveTests['trips'][number];

export function trip(
  digit: string | number,
  given: Pick<Trip, 'currentA' | 'heldForS' | 'opened'> & Partial<Trip>,
): Trip {
  return { id: idOf(digit), made: MADE, ...given };
}

type Lead = LiveTests['leads'][number];

/** Plus or minus lead of 35 mm² copper, XLPE marked 90 °C. */
export function mainLead(digit: string | number, given: Partial<Lead> = {}): Lead {
  return {
    id: idOf(digit),
    made: MADE,
    place: 'main',
    form: 'cable',
    way: 'printed',
    printedMm2: 35,
    insulation: 'xlpe',
    insulationDegC: 90,
    ...given,
  };
}
