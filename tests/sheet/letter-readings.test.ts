import { describe, expect, it } from 'vitest';
import { NO_LIVE_TESTS } from '../../src/record/fold-live-tests.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import { letterReadings } from '../../src/sheet/model/letter-readings.ts';
import { hutRecord, NEWEST_MS, stampAt } from './hut-pack.ts';

const { nameplate } = hutRecord();
const named = (id: string) => ({ id, made: stampAt(NEWEST_MS) });
const said = (tests: Partial<PackRecord['tests']>, given: PackRecord['nameplate'] = {}) =>
  letterReadings({ nameplate: { ...nameplate, ...given }, tests: { ...NO_LIVE_TESTS, ...tests } }).map((text) =>
    // Between a figure and its unit no line breaks.
    text.replaceAll('\u00a0', ' '),
  );

describe('the readings of a letter', () => {
  it('says of all 3 matters that they were not tried where no test was noted', () => {
    expect(said({})).toEqual([
      'Delivered capacity: not tested.',
      'Too much current: not tried.',
      'Cut-offs: none tried.',
    ]);
  });

  it('tells a run without a figure from no run, and a run that charged the pack as well', () => {
    const [started] = said({ runs: [{ ...named('r'), currentA: 20 }] });
    expect(started).toBe('Delivered capacity: tested; no run gave a figure.');
    const [charged] = said({ runs: [{ ...named('r'), end: 'taper', chargeAh: 98 }] });
    expect(charged).toBe('Delivered capacity: tested; no run gave a figure.');
  });

  it('gives 50 Ah of a run that was not complete as the least that was delivered', () => {
    expect(said({ runs: [{ ...named('r'), currentA: 20, chargeAh: 50 }] })[0]).toBe(
      'Delivered: at least 50 Ah; promised: 100 Ah · 2560 Wh.',
    );
  });

  // No claim is negative and no sensor reads without an end: the calculations refuse both, and say so by RangeError.
  it('says of all 3 matters that they were tried where a calculation refuses their figures', () => {
    const runs = [{ ...named('r'), currentA: 20, chargeAh: 50 }];
    expect(said({ runs }, { ratedCapacityAh: -1 })[0]).toBe(
      'Delivered capacity: tried; the figures could not be worked out.',
    );
    const trips = [{ ...named('t'), currentA: 150, heldForS: 2, opened: true }];
    expect(said({ trips }, { continuousCurrentA: -1 })[1]).toBe(
      'Too much current: tried; the figures could not be worked out.',
    );
    const cutOffs = [{ ...named('c'), kind: 'coldCharge', acted: true, sensorDegC: Number.POSITIVE_INFINITY } as const];
    expect(said({ cutOffs })[2]).toBe('Cut-offs: tried; the figures could not be worked out.');
  });
});
