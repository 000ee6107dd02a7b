import fc from 'fast-check';
import { cellBars } from '../../../src/drawing/cell-bars.ts';
import { deliveredBars } from '../../../src/drawing/delivered-bars.ts';
import type { Drawing } from '../../../src/drawing/display-list.ts';
import { logOverview } from '../../../src/drawing/log-overview.ts';
import { type RunCurve, runPlot } from '../../../src/drawing/run-plot.ts';
import { scoreCostPlot } from '../../../src/drawing/score-cost-plot.ts';
import { sharingBars } from '../../../src/drawing/sharing-bars.ts';
import { tripPlot } from '../../../src/drawing/trip-plot.ts';
import { zoneProfile } from '../../../src/drawing/zone-profile.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';
import { alt, cellInput, nothing, overviewInput, runInput, sharingInput, tick, tripInput } from './plot-samples.ts';

const size = { width: fc.integer({ min: 288, max: 720 }), height: fc.integer({ min: 60, max: 520 }) };
/** Words as people write them, short, long and none. */
const words = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom('0.2C', 'Wren 24, second run at 50 A', 'W'.repeat(60), 'Ω µ ±', ''),
);
const volts = fc.double({ min: -5, max: 60, noNaN: true });
const amps = fc.double({ min: -400, max: 400, noNaN: true });
const positive = (max: number) => fc.double({ min: 1e-3, max, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 4 });
const listOf = <T>(value: fc.Arbitrary<T>, length: number) => fc.array(value, { minLength: length, maxLength: length });

const run: fc.Arbitrary<RunCurve> = fc.integer({ min: 0, max: 20 }).chain((length) =>
  fc.record({
    label: words,
    timeS: listOf(positive(1e5), length).map((times) => [...times].sort((a, b) => a - b)),
    voltageV: maybe(listOf(volts, length)),
    currentA: maybe(listOf(amps, length)),
    chargeAh: maybe(listOf(positive(400), length)),
    end: fc.constantFrom(...RUN_END_CHOICES),
    cutOffVoltageV: maybe(volts),
  }),
);
const runs = fc
  .record({
    ...size,
    by: fc.constantFrom('time', 'charge'),
    runs: fc.array(run, { maxLength: 9 }),
    current: fc.boolean(),
  })
  .map((change) => runPlot(runInput(change)));

const point = fc.record({ currentA: positive(5000), timeS: positive(1e4) });
const trips = fc
  .record({
    ...size,
    trips: fc.array(
      fc.record({
        currentA: positive(5000),
        timeS: fc.oneof(positive(1e4), fc.constant(0)),
        opened: fc.boolean(),
        label: words,
      }),
      { maxLength: 8 },
    ),
    withstand: fc.array(fc.record({ label: words, points: fc.array(point, { maxLength: 6 }) }), { maxLength: 3 }),
    fuse: maybe(
      fc.record({
        label: words,
        gates: fc.array(
          fc.record({ currentA: positive(5000), minTimeS: maybe(positive(10)), maxTimeS: maybe(positive(1e4)) }),
          { maxLength: 4 },
        ),
      }),
    ),
    continuousA: maybe(positive(500)),
  })
  .map((change) => tripPlot(tripInput(change)));

const cells = fc
  .record({
    width: size.width,
    cells: fc.array(fc.record({ label: words, value: maybe(volts), text: words, flagged: fc.boolean() }), {
      maxLength: 32,
    }),
    lowText: words,
    highText: words,
    spreadText: words,
    unitText: words,
  })
  .map((change) => cellBars(cellInput([], change)));

const delivered = fc
  .record({
    width: size.width,
    rows: fc.array(
      fc.record({
        label: words,
        promised: maybe(positive(1e4)),
        promisedText: words,
        delivered: maybe(fc.double({ min: 0, max: 1e4, noNaN: true })),
        deliveredText: words,
        atLeast: fc.boolean(),
        shareText: words,
      }),
      { maxLength: 5 },
    ),
  })
  .map(deliveredBars);

const overview = fc
  .record({
    ...size,
    columns: fc.integer({ min: 0, max: 20 }).chain((length) =>
      fc.record({
        timeS: listOf(positive(1e6), length).map((times) => [...times].sort((a, b) => a - b)),
        voltageV: maybe(listOf(volts, length)),
        currentA: maybe(listOf(amps, length)),
      }),
    ),
    bands: fc.array(
      fc
        .record({ fromS: positive(1e6), lengthS: positive(1e6), label: words, chosen: fc.boolean() })
        .map(({ lengthS, ...band }) => ({ ...band, toS: band.fromS + lengthS })),
      { maxLength: 12 },
    ),
  })
  .map(({ columns, ...change }) => logOverview(overviewInput({ ...change, ...columns })));

const sharing = fc
  .record({
    width: size.width,
    strings: fc.array(
      fc.record({ label: words, shareFrac: maybe(fc.double({ min: 0, max: 1, noNaN: true })), text: words }),
      { maxLength: 6 },
    ),
  })
  .map((change) => sharingBars({ ...sharingInput([]), ...change }));

const range = (most: number) =>
  fc
    .tuple(fc.double({ min: 0, max: most, noNaN: true }), fc.double({ min: 0, max: most, noNaN: true }))
    .map(([one, other]) => ({ low: Math.min(one, other), high: Math.max(one, other) }));
const sign = fc.integer({ min: 0, max: 7 });

const scoreCost = fc
  .record({
    ...size,
    packs: fc.array(fc.record({ label: words, sign, costPerKwh: maybe(positive(1e5)), score: maybe(range(100)) }), {
      maxLength: 8,
    }),
  })
  .map((given) =>
    scoreCostPlot({
      ...given,
      words: {
        alt,
        nothing,
        score: 'Score',
        cost: 'Cost',
        tick,
        without: (labels) => `Not drawn: ${labels.join(', ')}`,
      },
    }),
  );

const profiles = fc
  .record({ width: size.width, zones: fc.array(words, { minLength: 1, maxLength: 12 }) })
  .chain(({ width, zones }) =>
    fc
      .array(fc.record({ label: words, sign, zones: listOf(maybe(range(1)), zones.length) }), { maxLength: 8 })
      .map((packs) =>
        zoneProfile({ width, zones, packs, words: { alt, nothing, axis: 'Zone', below: nothing, tick } }),
      ),
  );

/** One generator of drawings per plot. */
export const ARBITRARY_PLOTS: [name: string, drawing: fc.Arbitrary<Drawing>][] = [
  ['runPlot', runs],
  ['tripPlot', trips],
  ['cellBars', cells],
  ['deliveredBars', delivered],
  ['logOverview', overview],
  ['sharingBars', sharing],
  ['scoreCostPlot', scoreCost],
  ['zoneProfile', profiles],
];
