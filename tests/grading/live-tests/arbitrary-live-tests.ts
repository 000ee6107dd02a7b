import fc from 'fast-check';
import { CELL_STATES } from '../../../src/schema/live-tests/cell-set.ts';
import { CUT_OFF_KINDS } from '../../../src/schema/live-tests/cut-off.ts';
import { INSULATIONS, LEAD_PLACES, LEAD_WAYS, METALS } from '../../../src/schema/live-tests/lead.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';
import type { Nameplate, nameplateFields } from '../../../src/schema/nameplate.ts';
import { PHOTO } from '../../record/made-entries.ts';
import { id } from './tested-pack.ts';

/** Any entry that the schema admits may be drawn, at figures from a thousandth to ten thousand. */
export interface DrawnTest {
  subject: string;
  value: object;
  /** Cells of a set, or shares of a parallel run. */
  members?: Record<string, number | undefined>[];
}

const positive = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const orZero = fc.oneof(positive, fc.constant(0));
/** Of a pack and of a meter's accuracy: the most that the schema takes. */
const packVolts = fc.double({ min: 1e-3, max: 2000, noNaN: true });
const percent = fc.double({ min: 0, max: 100, noNaN: true });
const tempDegC = fc.double({ min: -273.15, max: 1500, noNaN: true });
const volts = fc.oneof(fc.double({ min: 2, max: 4, noNaN: true }), fc.double({ min: -2000, max: 2000, noNaN: true }));
const yes = fc.boolean();
const oneOf = <T>(list: readonly T[]) => fc.constantFrom(...list);
const point = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
const awg = fc.constantFrom('4/0', '1/0', '0', '1', '10', '18', '19', '30', '31', '40');

/** `must` are there, `may` are there or absent. */
function drawn(
  subject: string,
  must: Fields,
  may: Fields,
  member?: Record<string, fc.Arbitrary<number>>,
): fc.Arbitrary<DrawnTest> {
  const value = fc.record({ ...must, ...may }, { requiredKeys: Object.keys(must) });
  if (member === undefined) return value.map((one) => ({ subject, value: one }));
  const members = fc.array(fc.record(member, { requiredKeys: [] }), { maxLength: 8 });
  return fc.tuple(value, members).map(([one, list]) => ({ subject, value: one, members: list }));
}
type Fields = Record<string, fc.Arbitrary<unknown>>;

const METER = {
  voltageReadingPct: percent,
  voltageAbsoluteV: packVolts,
  currentReadingPct: percent,
  currentAbsoluteA: orZero,
};
const RUN = {
  ...{ chargeAh: positive, energyWh: positive, durationS: positive, currentA: positive, meanVoltageV: positive },
  ...{ end: oneOf(RUN_END_CHOICES), chargedToV: packVolts, taperA: orZero, restMin: orZero },
  instrumentId: fc.constant(id(1)),
};
const LEAD = {
  ...{ way: oneOf(LEAD_WAYS), printedMm2: positive, printedAwg: awg, diameterMm: positive, insulationDegC: tempDegC },
  ...{ insulation: oneOf(INSULATIONS), count: fc.integer({ min: 1, max: 40 }), equal: yes, lengthMm: positive },
  ...{ aroundDegC: tempDegC, widthMm: positive, thicknessMm: positive, layers: fc.integer({ min: 1, max: 100 }) },
  metal: oneOf(METALS),
};
const CUT_OFF = {
  ...{ by: oneOf(['bms', 'thermalSwitch']), packVoltageV: packVolts, worstCellVoltageV: volts, sensorDegC: tempDegC },
  ...{ currentA: positive, afterS: orZero },
};
const READINGS = { firstA: orZero, firstV: volts, secondA: orZero, secondV: volts, afterS: orZero };
const form = oneOf(['cable', 'bar']);

const anyTest: fc.Arbitrary<DrawnTest> = fc.oneof(
  drawn('run', {}, RUN),
  drawn('trip', { currentA: positive, heldForS: orZero, opened: yes }, { heatSeen: yes, coolingNeeded: yes }),
  drawn('cutOff', { kind: oneOf(CUT_OFF_KINDS), acted: yes }, CUT_OFF),
  drawn(
    'cellSet',
    { state: oneOf(CELL_STATES) },
    { restedMin: orZero, resistanceBy: oneOf(['ac', 'dc']) },
    { voltageV: volts, resistanceMohm: positive, bmsVoltageV: volts },
  ),
  drawn('resistance', { method: oneOf(['twoStep', 'pulse']), of: oneOf(['pack', 'cell']) }, READINGS),
  drawn('lead', { place: oneOf(LEAD_PLACES), form }, LEAD),
  drawn(
    'joint',
    { place: oneOf(['terminal', 'inside']) },
    { currentA: positive, jointDegC: tempDegC, aroundDegC: tempDegC, dropMv: orZero },
  ),
  drawn('drain', { currentMa: orZero }, {}),
  drawn('parallelRun', { of: oneOf(['packs', 'strings']) }, {}, { chargeAh: orZero }),
  drawn('cellMark', { text: fc.string({ minLength: 1, maxLength: 40 }), read: oneOf(['photo', 'typed']) }, {}),
  drawn(
    'ruler',
    { photoId: fc.constant(PHOTO), corners: fc.tuple(point, point, point, point), from: point, to: point },
    { offPlaneMm: orZero, cameraMm: positive },
  ),
);

/** Of the first, an instrument, the runs that say so were made with it. */
export const testsArb: fc.Arbitrary<DrawnTest[]> = fc
  .tuple(drawn('instrument', { name: fc.constant('Meter') }, METER), fc.array(anyTest, { maxLength: 12 }))
  .map(([meter, others]) => [meter, ...others]);

const count = fc.integer({ min: 1, max: 16 });
const CLAIMS = {
  ...{ nominalVoltageV: packVolts, ratedCapacityAh: positive, ratedEnergyWh: positive, cellsInSeries: count },
  ...{ stringsInParallel: count, continuousCurrentA: positive, chargeCurrentA: positive, chargeVoltageV: packVolts },
  ...{ dischargeLowestDegC: fc.double({ min: -273.15, max: 500, noNaN: true }), price: orZero },
} satisfies Partial<Record<keyof typeof nameplateFields, fc.Arbitrary<number>>>;
export const nameplateArb: fc.Arbitrary<Nameplate> = fc.record(CLAIMS, { requiredKeys: [] });
