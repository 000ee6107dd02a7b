import { describe, expect, it } from 'vitest';
import { cutOffNotices } from '../../../src/app/live-tests/kinds/cut-off-words.ts';
import { jointNotices } from '../../../src/app/live-tests/kinds/joint.ts';
import { resistanceNotices } from '../../../src/app/live-tests/kinds/resistance.ts';
import { tripNotices } from '../../../src/app/live-tests/kinds/trip.ts';
import { cutOffWords } from '../../../src/text/live-tests/cut-off.ts';
import { tripWords } from '../../../src/text/live-tests/trip.ts';

const NBSP = '\u00a0';
const nameplate = { continuousCurrentA: 100, peakCurrentA: 200, peakForS: 5, chargeCurrentA: 50, cellsInSeries: 8 };
const context = { nameplate, units: 'metric' as const };

describe('beyond what the nameplate claims', () => {
  it('says nothing of a trip at the continuous 100 A, and nothing without a claim', () => {
    expect(tripNotices({ currentA: 100, heldForS: 60 }, context)).toEqual([]);
    expect(tripNotices({ currentA: 400 }, { nameplate: {} })).toEqual([]);
  });

  it('says it of 101 A once, and of 201 A as above the peak instead', () => {
    expect(tripNotices({ currentA: 101 }, context)).toEqual([tripWords.aboveContinuous(`101${NBSP}A`, `100${NBSP}A`)]);
    expect(tripNotices({ currentA: 201 }, context)).toEqual([tripWords.abovePeak(`201${NBSP}A`, `200${NBSP}A`)]);
  });

  it('says that 6 s is longer than the 5 s of the peak, and that over 60 s only heat opens', () => {
    expect(tripNotices({ currentA: 150, heldForS: 6 }, context)).toContain(
      tripWords.longerThanPeak(`6${NBSP}s`, `5${NBSP}s`),
    );
    expect(tripNotices({ currentA: 90, heldForS: 60 }, context)).toEqual([]);
    expect(tripNotices({ currentA: 90, heldForS: 61 }, context)).toEqual([tripWords.longHold]);
  });

  it('says it of a charge current of 51 A, a joint at 101 A and a pulse of 101 A', () => {
    expect(cutOffNotices({ kind: 'chargeCurrent', currentA: 51 }, context)).toEqual([
      cutOffWords.aboveClaim(`51${NBSP}A`, `50${NBSP}A`),
    ]);
    expect(cutOffNotices({ kind: 'chargeCurrent', currentA: 50 }, context)).toEqual([]);
    expect(jointNotices({ currentA: 101 }, context)).toHaveLength(1);
    expect(resistanceNotices({ firstA: 0, secondA: 101 }, context)).toHaveLength(1);
    expect(resistanceNotices({ firstA: 0, secondA: 100 }, context)).toEqual([]);
  });
});

describe('past where it is ended by hand', () => {
  it('is 3.80 V at a cell, or 30.4 V over 8 cells, unless the pack cut it off', () => {
    const full = { kind: 'highVoltage' as const };
    expect(cutOffNotices({ ...full, worstCellVoltageV: 3.79 }, context)).toEqual([]);
    expect(cutOffNotices({ ...full, worstCellVoltageV: 3.8 }, context)).toEqual([
      cutOffWords.pastVoltage(`3.8${NBSP}V`, `3.8${NBSP}V`),
    ]);
    expect(cutOffNotices({ ...full, packVoltageV: 30.4 }, context)).toHaveLength(1);
    expect(cutOffNotices({ ...full, packVoltageV: 30.4 }, { ...context, nameplate: {} })).toEqual([]);
    expect(cutOffNotices({ ...full, worstCellVoltageV: 3.9, acted: true }, context)).toEqual([]);
  });

  it('is 2.0 V at the lowest cell, and −10 °C at a sensor while it still charges', () => {
    expect(cutOffNotices({ kind: 'lowVoltage', worstCellVoltageV: 2.01 }, context)).toEqual([]);
    expect(cutOffNotices({ kind: 'lowVoltage', worstCellVoltageV: 2 }, context)).toHaveLength(1);
    expect(cutOffNotices({ kind: 'coldCharge', sensorDegC: -9 }, context)).toEqual([]);
    expect(cutOffNotices({ kind: 'coldCharge', sensorDegC: -10 }, context)).toHaveLength(1);
  });
});
