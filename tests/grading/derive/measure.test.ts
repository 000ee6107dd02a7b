import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../src/schema/answer.ts';
import { gradedItem } from './tests-of.ts';

const readings = (values: Record<string, number>, more: object = {}): Answer => ({
  kind: 'readings',
  values,
  evidence: 'measured',
  ...more,
});

describe('readings typed into an item', () => {
  it.each([
    ['sensor-reading', { bms: 22, thermometer: 24 }, 'sound'],
    ['sensor-reading', { bms: 22, thermometer: 19.9 }, 'passable'],
    ['sensor-reading', { bms: -4, thermometer: 4.5 }, 'failed'],
    ['vent-headroom', { gap: 10 }, 'sound'],
    ['vent-headroom', { gap: 9.9 }, 'passable'],
    ['vent-headroom', { gap: 0 }, 'failed'],
    // 50 mA of 100 Ah is 0.5 mA per Ah; 20 mA is 0.2.
    ['balancing', { stage: 50 }, 'sound'],
    ['balancing', { stage: 20 }, 'passable'],
    ['balancing', { stage: 0 }, 'failed'],
    // 8 cells of 100 Ah at 3.2 V are 2560 Wh, as printed; of 80 Ah 2048 Wh: printed is 25 % above.
    ['energy-claim', { cell: 100, count: 8 }, 'sound'],
    ['energy-claim', { cell: 80, count: 8 }, 'failed'],
  ])('%s %o is graded by its bands', (item, values, expected) => {
    const nameplate = { ratedCapacityAh: 100, ratedEnergyWh: 2560 };
    expect(gradedItem(item, { answer: readings(values), nameplate })).toMatchObject({
      grades: expected,
      because: 'measured',
      evidence: 'measured',
    });
  });

  // 10.8 Ah × 48 V is what 15 cells of 10.8 Ah at 3.2 V give; in binary it comes out 2e-14 % above.
  it('call 10.8 Ah at 48 V what 15 cells of 10.8 Ah give, 0 % above: sound', () => {
    const nameplate = { ratedCapacityAh: 10.8, nominalVoltageV: 48 };
    expect(gradedItem('energy-claim', { answer: readings({ cell: 10.8, count: 15 }), nameplate }).grades).toBe('sound');
  });

  it('settle nothing while one is missing: an empty box is no zero', () => {
    expect(gradedItem('sensor-reading', { answer: readings({ bms: 22 }) })).toMatchObject({
      because: 'unanswered',
      measured: null,
      settled: false,
    });
  });

  it('settle nothing while the Nameplate lacks what they are held against', () => {
    expect(gradedItem('balancing', { answer: readings({ stage: 50 }) }).measured).toBeNull();
  });

  it('outside what a person can have read are an error, kept with what and where', () => {
    expect(gradedItem('sensor-reading', { answer: readings({ bms: 900, thermometer: 20 }) })).toMatchObject({
      because: 'error',
      error: 'measured: The BMS shows must be from -60 to 200, got 900',
      settled: false,
    });
  });

  it('can be overruled with a reason, and both stay: sound by the figure, failed as it jumps', () => {
    const overruled = { grade: 'failed', because: 'It jumps.' };
    expect(
      gradedItem('sensor-reading', { answer: readings({ bms: 20, thermometer: 20 }, { overruled }) }),
    ).toMatchObject({
      grades: 'failed',
      measured: { possible: ['sound'], overrules: 'It jumps.' },
    });
  });

  it('under an item that is looked at are an error of the record, not of the pack', () => {
    expect(gradedItem('handles', { answer: readings({ gap: 3 }) })).toMatchObject({ because: 'error', settled: false });
  });
});
