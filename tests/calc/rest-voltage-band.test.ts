import { describe, expect, it } from 'vitest';
import { LEAST_REST_MIN, restVoltageBand } from '../../src/calc/rest-voltage-band.ts';
import { OCV_LFP } from '../../src/calc/tables/ocv-lfp.ts';

const rested = (cellVoltageV: number) => restVoltageBand({ cellVoltageV, restedMin: 60 });

describe('restVoltageBand', () => {
  // Rest voltages of a table in public firmware; its 20 and 90 % are the edges.
  it.each(OCV_LFP)(
    'says of $cellV V, the table figure at $chargePct %, nothing that is not so',
    ({ chargePct, cellV }) => {
      const expected = chargePct < 20 ? 'below20' : chargePct > 90 ? 'over90' : 'cannotTell';
      expect(rested(cellV)).toBe(expected);
    },
  );

  // 202 Ah cell data sheet (Rev 0, 2020): 30 to 50 % is 3.275 to 3.304 V.
  it.each([3.275, 3.304])('cannot tell from %d V, which a cell data sheet prints for 30 or 50 %', (cellVoltageV) => {
    expect(rested(cellVoltageV)).toBe('cannotTell');
  });

  it('has its edges just under 3.20 V and just over 3.35 V', () => {
    expect(rested(3.1999)).toBe('below20');
    expect(rested(3.2)).toBe('cannotTell');
    expect(rested(3.35)).toBe('cannotTell');
    expect(rested(3.3501)).toBe('over90');
  });

  it('says nothing before 30 minutes of rest, or when nobody knows', () => {
    expect(LEAST_REST_MIN).toBe(30);
    expect(restVoltageBand({ cellVoltageV: 3.1, restedMin: 29.9 })).toBe('notRested');
    expect(restVoltageBand({ cellVoltageV: 3.1, restedMin: 0 })).toBe('notRested');
    expect(restVoltageBand({ cellVoltageV: 3.1, restedMin: null })).toBe('notRested');
    expect(restVoltageBand({ cellVoltageV: 3.1, restedMin: 30 })).toBe('below20');
  });

  it('refuses a voltage that is not finite and negative minutes', () => {
    expect(() => rested(Number.NaN)).toThrow(RangeError);
    expect(() => restVoltageBand({ cellVoltageV: 3.3, restedMin: -1 })).toThrow(RangeError);
  });
});
