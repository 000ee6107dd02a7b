import { describe, expect, it } from 'vitest';
import { liveResults } from '../../../src/grading/live-tests/live-results.ts';
import { protectionsOf } from '../../../src/grading/side-by-side/protections.ts';
import { PROTECTION_KINDS, type ProtectionKind } from '../../../src/grading/side-by-side/side-by-side.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { packOf, test } from '../live-tests/tested-pack.ts';

interface Tried {
  trips?: readonly object[];
  cutOffs?: readonly object[];
  plate?: Nameplate;
}

function protections({ trips = [], cutOffs = [], plate = { continuousCurrentA: 100 } }: Tried) {
  const pack = packOf(
    plate,
    ...trips.map((trip, at) => test('trip', at + 1, trip)),
    ...cutOffs.map((cutOff, at) => test('cutOff', at + 101, cutOff)),
  );
  return protectionsOf(liveResults(pack), pack.tests);
}

function found(kind: ProtectionKind, tried: Tried): string {
  const protection = protections(tried).find((one) => one.kind === kind);
  const sides = protection?.sides === null ? '' : `, ${protection?.sides}`;
  const heat = protection?.heatOnlyCount === 0 ? '' : `, ${protection?.heatOnlyCount} by heat only`;
  return `${protection?.state}, ${protection?.trialCount}${sides}${heat}`;
}

it('lists all six in order, none of them tested, resting on 0 trials', () => {
  expect(protections({})).toEqual(
    PROTECTION_KINDS.map((kind) => ({ kind, state: 'notTested', trialCount: 0, heatOnlyCount: 0, sides: null })),
  );
});

/** Expected by the limits of calc/overcurrent-behaviour.ts: 1 s, 60 s and 1.5 × the claim, here 150 A. */
describe('over-current', () => {
  const at200A = { currentA: 200, opened: true };
  it.each([
    ['opened in 0.5 s', [{ ...at200A, heldForS: 0.5 }], 'acts, 1'],
    ['opened after 30 s', [{ ...at200A, heldForS: 30 }], 'acts, 1'],
    ['opened after 61 s, by heat then', [{ ...at200A, heldForS: 61 }], 'doesNot, 1, 1 by heat only'],
    [
      'opened after 5 s with heat and cooling',
      [{ ...at200A, heldForS: 5, heatSeen: true, coolingNeeded: true }],
      'doesNot, 1, 1 by heat only',
    ],
    ['150 A held for 60 s', [{ currentA: 150, heldForS: 60, opened: false }], 'doesNot, 1'],
    [
      '140 A, under 1.5 times the claim, by heat alone',
      [{ currentA: 140, heldForS: 61, opened: true }],
      'notTested, 0',
    ],
    ['149 A held for 60 s', [{ currentA: 149, heldForS: 60, opened: false }], 'notTested, 0'],
    [
      '150 A held for 60 s, 200 A opened',
      [
        { currentA: 150, heldForS: 60, opened: false },
        { ...at200A, heldForS: 2 },
      ],
      'doesNot, 2',
    ],
    [
      '400 A opened at once, 200 A by heat alone',
      [
        { currentA: 400, heldForS: 0.2, opened: true },
        { ...at200A, heldForS: 61 },
      ],
      'doesNot, 2, 1 by heat only',
    ],
    [
      '200 A opened, 149 A held, which tells nothing',
      [
        { ...at200A, heldForS: 2 },
        { currentA: 149, heldForS: 60, opened: false },
      ],
      'acts, 1',
    ],
  ])('%s', (_name, trips, expected) => {
    expect(found('overCurrent', { trips })).toBe(expected);
  });

  it('says nothing of a short: one that opened in 0.1 s leaves over-current not tested', () => {
    expect(found('overCurrent', { trips: [{ currentA: 900, heldForS: 0.1, opened: true, short: true }] })).toBe(
      'notTested, 0',
    );
  });
});

describe('short', () => {
  const short = { currentA: 900, opened: true, short: true };
  it.each([
    ['opened in 1 s', [{ ...short, heldForS: 1 }], 'acts, 1'],
    ['opened in 1.01 s', [{ ...short, heldForS: 1.01 }], 'actsLate, 1'],
    [
      'opened in 0.5 s by heat',
      [{ ...short, heldForS: 0.5, heatSeen: true, recovery: 'cooling' }],
      'doesNot, 1, 1 by heat only',
    ],
    ['opened in 61 s, by heat then', [{ ...short, heldForS: 61 }], 'doesNot, 1, 1 by heat only'],
    ['not opened', [{ ...short, heldForS: 3, opened: false }], 'doesNot, 1'],
    [
      'opened once, not opened once',
      [
        { ...short, heldForS: 0.2 },
        { ...short, heldForS: 3, opened: false },
      ],
      'doesNot, 2',
    ],
    ['an overload alone', [{ currentA: 200, heldForS: 0.2, opened: true }], 'notTested, 0'],
  ])('%s', (_name, trips, expected) => {
    expect(found('short', { trips })).toBe(expected);
  });
});

/** Expected by the limits of grading/live-tests/cut-off-limits.ts: cold 0 and −10 °C, hot 65 and 80 °C. */
describe('temperature', () => {
  const cut = (kind: string, sensorDegC: number, acted = true) => ({ kind, sensorDegC, acted });
  const cold: Nameplate = { dischargeLowestDegC: -20 };
  it.each([
    ['lowTemperature', 'charge cut at 0 °C', [cut('coldCharge', 0)], 'acts, 1'],
    ['lowTemperature', 'charge cut at −5 °C', [cut('coldCharge', -5)], 'actsLate, 1'],
    ['lowTemperature', 'charge not cut by −10 °C', [cut('coldCharge', -10, false)], 'doesNot, 1'],
    ['lowTemperature', 'charge driven to −5 °C only', [cut('coldCharge', -5, false)], 'notTested, 0'],
    ['lowTemperature', 'load alone tried', [cut('coldDischarge', -15)], 'notTested, 0'],
    ['lowTemperature', 'load alone tried, not cut', [cut('coldDischarge', -31, false)], 'notTested, 0'],
    ['lowTemperature', 'charge cut, load cut in time', [cut('coldCharge', 1), cut('coldDischarge', -15)], 'acts, 1'],
    ['lowTemperature', 'charge cut, load not', [cut('coldCharge', 1), cut('coldDischarge', -31, false)], 'acts, 1'],
    ['highTemperature', 'charge cut at 60 °C', [cut('hotCharge', 60)], 'acts, 1, charge'],
    ['highTemperature', 'load cut at 60 °C', [cut('hotDischarge', 60)], 'acts, 1, load'],
    ['highTemperature', 'charge cut, load late', [cut('hotCharge', 60), cut('hotDischarge', 70)], 'actsLate, 2, both'],
    [
      'highTemperature',
      'charge cut, load not by 80 °C',
      [cut('hotCharge', 60), cut('hotDischarge', 80, false)],
      'doesNot, 2, both',
    ],
    [
      'highTemperature',
      'charge cut, load to 70 °C only',
      [cut('hotCharge', 60), cut('hotDischarge', 70, false)],
      'acts, 1, charge',
    ],
    ['highTemperature', 'a temperature nobody noted', [{ kind: 'hotCharge', acted: true }], 'notTested, 0'],
  ] as const)('%s: %s', (kind, _name, cutOffs, expected) => {
    expect(found(kind, { cutOffs, plate: cold })).toBe(expected);
  });
});

/** The same: 3.65 and 3.8 V, 2.5 and 2.0 V of the worst cell. */
describe('voltage', () => {
  const cut = (kind: string, worstCellVoltageV: number, acted = true) => ({ kind, worstCellVoltageV, acted });
  it.each([
    ['highVoltage', 'cut at 3.65 V', [cut('highVoltage', 3.65)], 'acts, 1'],
    ['highVoltage', 'cut at 3.7 V', [cut('highVoltage', 3.7)], 'actsLate, 1'],
    ['highVoltage', 'not cut by 3.8 V', [cut('highVoltage', 3.8, false)], 'doesNot, 1'],
    [
      'highVoltage',
      'cut at 3.65 V once and 3.85 V once',
      [cut('highVoltage', 3.65), cut('highVoltage', 3.85)],
      'doesNot, 2',
    ],
    ['lowVoltage', 'cut at 2.5 V', [cut('lowVoltage', 2.5)], 'acts, 1'],
    ['lowVoltage', 'cut at 2.2 V', [cut('lowVoltage', 2.2)], 'actsLate, 1'],
    ['lowVoltage', 'not cut by 1.9 V', [cut('lowVoltage', 1.9, false)], 'doesNot, 1'],
    ['lowVoltage', 'stopped at 2.4 V', [cut('lowVoltage', 2.4, false)], 'notTested, 0'],
    ['lowVoltage', 'only the other tried', [cut('highVoltage', 3.65)], 'notTested, 0'],
  ] as const)('%s: %s', (kind, _name, cutOffs, expected) => {
    expect(found(kind, { cutOffs })).toBe(expected);
  });
});
