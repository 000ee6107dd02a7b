import fc from 'fast-check';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import { CELL_STATES } from '../../../src/schema/live-tests/cell-set.ts';
import { CUT_OFF_KINDS, WAKE_UPS } from '../../../src/schema/live-tests/cut-off.ts';
import { METALS } from '../../../src/schema/live-tests/lead.ts';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import { RECOVERIES } from '../../../src/schema/live-tests/trip.ts';
import { named } from './tests-of.ts';

/** One test of any kind that an item is derived from, at figures on and about the checklist's limits. */
export type Drawn = { [K in keyof LiveTests]: { kind: K; value: LiveTests[K][number] } }[keyof LiveTests];

const yes = fc.boolean();
const oneOf = <T>(list: readonly T[]) => fc.constantFrom(...list);
const about = (limits: readonly number[], by: number) =>
  fc.tuple(oneOf(limits), oneOf([-by, 0, 0, by])).map(([limit, off]) => Number((limit + off).toFixed(6)));

const cellV = about([-0.4, 2, 2.3, 2.5, 3, 3.2, 3.29, 3.3, 3.34, 3.4, 3.45, 3.5, 3.65, 3.75, 3.8], 0.005);
const sensorDegC = about([-14, -10, -5, 0, 1, 60, 65, 78, 80], 1);
const timeS = about([1, 10, 59, 60, 61, 90], 0.5);

/** Required fields in `must`; those in `may` are there or absent. */
function drawn<K extends Drawn['kind']>(kind: K, must: Fields, may: Fields = {}): fc.Arbitrary<Drawn> {
  const fields = fc.record({ ...must, ...may }, { requiredKeys: Object.keys(must) });
  return fields.map((value) => ({ kind, value }) as unknown as Drawn);
}
type Fields = Record<string, fc.Arbitrary<unknown>>;

const cells = fc
  .array(
    fc.record({ voltageV: cellV, resistanceMohm: oneOf([0.2, 0.22, 0.3]), bmsVoltageV: cellV }, { requiredKeys: [] }),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((list) => list.map((cell, at) => ({ ...cell, number: at + 1 })));

export const roundArb = drawn('cellSets', { state: oneOf(CELL_STATES), cells });

const EACH_KIND: readonly fc.Arbitrary<Drawn>[] = [
  drawn(
    'trips',
    { currentA: oneOf([90, 149, 150, 300, 600]), heldForS: timeS, opened: yes },
    { heatSeen: yes, coolingNeeded: yes, recovery: oneOf(RECOVERIES) },
  ),
  drawn(
    'cutOffs',
    { kind: oneOf(CUT_OFF_KINDS), acted: yes },
    {
      ...{
        by: oneOf(['bms', 'thermalSwitch']),
        packVoltageV: about([8, 10, 14.6, 15.2], 0.1),
        worstCellVoltageV: cellV,
      },
      ...{
        sensorDegC,
        currentA: oneOf([50, 62.5, 75, 99, 100, 110]),
        afterS: timeS,
        method: oneOf(['cup', 'warmAir']),
      },
      ...{ sensorAfter: oneOf(['whole', 'melted']), recovery: oneOf(RECOVERIES) },
      ...{ recoveredAtDegC: oneOf([-3, 4]), wakeUp: oneOf(WAKE_UPS) },
    },
  ),
  roundArb,
  drawn(
    'leads',
    { place: oneOf(['main']), form: oneOf(['cable']), printedMm2: oneOf([6, 16, 25]) },
    {
      insulationDegC: oneOf([75, 105]),
      count: oneOf([1, 2]),
      equal: yes,
      metal: oneOf(['copper', 'copper', 'aluminium']),
    },
  ),
  drawn(
    'leads',
    { place: oneOf(['link']), form: oneOf(['bar']), thicknessMm: oneOf([1]) },
    { widthMm: oneOf([7, 12, 20, 40]), metal: oneOf(METALS) },
  ),
  drawn(
    'joints',
    { place: oneOf(['terminal', 'inside']) },
    {
      currentA: oneOf([24, 25, 50, 100]),
      afterMin: oneOf([2, 30]),
      jointDegC: about([25, 45, 60, 75], 1),
      aroundDegC: oneOf([25]),
    },
  ),
  drawn('drains', { currentMa: oneOf([0, 10, 20, 50, 100]) }, { mode: oneOf(['awake', 'asleep', 'afterCutOff']) }),
  drawn(
    'readOuts',
    { way: oneOf(['wireless', 'cable']) },
    { connected: yes, accountNeeded: yes, rangeM: oneOf([3, 5, 8]) },
  ),
];

export const trialArb: fc.Arbitrary<Drawn> = fc.oneof(...EACH_KIND);

/** Some tests and one more, most of them of one kind: only these bear on the same items. */
export const someAndOneMoreArb: fc.Arbitrary<{ some: Drawn[]; more: Drawn }> = fc
  .constantFrom(...EACH_KIND)
  .chain((one) =>
    fc.record({ some: fc.array(fc.oneof({ weight: 5, arbitrary: one }, trialArb), { maxLength: 5 }), more: one }),
  );

/** The tests as folded, in the order given. */
export function testsFrom(list: readonly Drawn[]): LiveTests {
  const tests: Record<string, object[]> = {};
  for (const [place, { kind, value }] of list.entries()) {
    tests[kind] = [...(tests[kind] ?? []), { ...value, ...named(place) }];
  }
  return { ...NO_LIVE_TESTS, ...tests } as LiveTests;
}
