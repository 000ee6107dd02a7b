import { describe, expect, it } from 'vitest';
import { leadResults, mainLeadsAllowableA } from '../../../src/grading/live-tests/lead-result.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { packOf, test } from './tested-pack.ts';

/** 33 CFR 183.425 Table 5, 105 °C column: 330 A for 2/0, 385 A for 3/0. */
const CABLE = { place: 'main', form: 'cable', way: 'printed', printedAwg: '2/0', insulationDegC: 105 };

function lead(value: object, nameplate: Nameplate = {}) {
  const [result] = leadResults(packOf(nameplate, test('lead', 1, value)));
  if (result === undefined) throw new Error('no lead');
  return result;
}

function mainA(...leads: object[]) {
  return mainLeadsAllowableA(packOf({}, ...leads.map((value, at) => test('lead', at + 1, value))));
}

describe('area of one conductor', () => {
  it('is 67.43 mm² for a printed 2/0, within nothing (ASTM B258)', () => {
    const { areaMm2 } = lead(CABLE);
    expect(areaMm2?.best).toBeCloseTo(67.43, 2);
    expect(areaMm2).toMatchObject({ low: areaMm2?.best, high: areaMm2?.best });
  });

  it('is 84.82 mm², from 79.17 to 90.48, for bare strands of 12 mm: π/4 · 144 · (0.70, 0.75, 0.80)', () => {
    const { areaMm2 } = lead({ ...CABLE, way: 'bareStrands', diameterMm: 12 });
    expect(areaMm2?.low).toBeCloseTo(Math.PI * 36 * 0.7, 9);
    expect(areaMm2?.best).toBeCloseTo(Math.PI * 36 * 0.75, 9);
    expect(areaMm2?.high).toBeCloseTo(Math.PI * 36 * 0.8, 9);
  });

  it('is 60 mm² for a bar of two layers of 20 by 1.5 mm', () => {
    const bar = { place: 'link', form: 'bar', widthMm: 20, thicknessMm: 1.5, layers: 2 };
    expect(lead(bar).areaMm2).toEqual({ low: 60, best: 60, high: 60 });
  });

  it('takes a printed size without a word on how it is known, and 0.00501 mm² for AWG 40', () => {
    expect(lead({ place: 'main', form: 'cable', printedMm2: 35 }).areaMm2?.best).toBe(35);
    const sense = { place: 'sense', form: 'cable', way: 'printed', printedAwg: '40' };
    expect(lead(sense).areaMm2?.best).toBeCloseTo(0.00501, 5);
  });

  it.each([
    ['over insulation', { ...CABLE, way: 'overInsulation', diameterMm: 16 }, 'overInsulation'],
    ['a diameter over nobody knows what', { place: 'main', form: 'cable', diameterMm: 12 }, 'wayNotSaid'],
    ['nothing but its place', { place: 'main', form: 'cable' }, 'nothingMeasured'],
    ['printed without the print', { place: 'main', form: 'cable', way: 'printed' }, 'nothingMeasured'],
    ['a bar of which only the width is known', { place: 'link', form: 'bar', widthMm: 20 }, 'nothingMeasured'],
  ])('is refused and gives no current: %s', (_name, value, areaRefused) => {
    const result = lead(value, { continuousCurrentA: 100 });
    expect(result).toMatchObject({ areaMm2: null, areaRefused, allowable: null, densityAPerMm2: null });
    expect(result).toMatchObject({ resistanceMohm: null, dropMv: null, heatW: null, withstand: null });
  });
});

describe('allowable current', () => {
  it('is 330 A for 2/0 at 105 °C', () => {
    expect(lead(CABLE)).toMatchObject({ counted: 'one', allowable: { lowA: 330, bestA: 330, highA: 330 } });
  });

  it('is 660 A for two equal ones and 330 A for two that are not, or not known to be', () => {
    expect(lead({ ...CABLE, count: 2, equal: true })).toMatchObject({ counted: 'sum', allowable: { bestA: 660 } });
    const alone = { counted: 'largestAlone', allowable: { lowA: 330, bestA: 330, highA: 330 } };
    expect(lead({ ...CABLE, count: 2, equal: false })).toMatchObject(alone);
    expect(lead({ ...CABLE, count: 2 })).toMatchObject(alone);
  });

  it('is 330 to 385 A for bare strands of 12 mm: 2/0 at the least area, 3/0 at the most', () => {
    const { allowable } = lead({ ...CABLE, way: 'bareStrands', diameterMm: 12 });
    expect(allowable).toEqual({ lowA: 330, bestA: 385, highA: 385 });
  });

  it('is 282.6 A in air of 50 °C: 330 · √(55/75)', () => {
    expect(lead({ ...CABLE, aroundDegC: 50 }).allowable?.bestA).toBeCloseTo(330 * Math.sqrt(55 / 75), 9);
  });

  it('cannot be told without the insulation, of aluminium, of a bar, or where the least area is thinner than 18', () => {
    const { insulationDegC: _, ...unmarked } = CABLE;
    expect(lead(unmarked).allowable).toBeNull();
    expect(lead({ ...CABLE, metal: 'aluminium' }).allowable).toBeNull();
    expect(lead({ ...CABLE, form: 'bar', widthMm: 20, thicknessMm: 2 }).allowable).toBeNull();
    // π/4 · 1.19² · 0.75 is 0.834 mm², at the least 0.779 mm²; AWG 18 has 0.823 mm².
    expect(lead({ ...CABLE, way: 'bareStrands', diameterMm: 1.19 }).allowable).toBeNull();
  });
});

describe('the main leads of the pack', () => {
  it('are allowed 330 A by the weaker of plus and minus', () => {
    expect(mainA({ ...CABLE, printedAwg: '3/0' }, CABLE)).toEqual({ low: 330, best: 330, high: 330 });
  });

  it('count as the sum where they are two equal ones, 660 A, and as one alone where not, 330 A', () => {
    expect(mainA({ ...CABLE, count: 2, equal: true })?.best).toBe(660);
    expect(mainA({ ...CABLE, count: 2, equal: false })?.best).toBe(330);
  });

  it('leave out links, sense wires and bars', () => {
    const sense = { ...CABLE, place: 'sense', printedAwg: '18' };
    const bar = { place: 'main', form: 'bar', widthMm: 20, thicknessMm: 3 };
    expect(mainA(sense, CABLE, bar)?.best).toBe(330);
  });

  it('cannot be told while one is measured over its insulation, or none is measured', () => {
    expect(mainA(CABLE, { ...CABLE, way: 'overInsulation', diameterMm: 16 })).toBeNull();
    expect(mainA()).toBeNull();
  });
});

describe('under load', () => {
  it('drops 27.2 mV and makes 2.72 W at 100 A over 1 m of 70 mm²: 0.272 mΩ (IEC 60228:2004 Table 3)', () => {
    const cable = { place: 'main', form: 'cable', printedMm2: 70, lengthMm: 1000 };
    const result = lead(cable, { continuousCurrentA: 100 });
    expect(result.resistanceMohm).toBeCloseTo(0.272, 9);
    expect(result.resistanceAtDegC).toBe(20);
    expect(result.dropMv).toBeCloseTo(27.2, 9);
    expect(result.heatW).toBeCloseTo(2.72, 9);
    expect(result.densityAPerMm2).toBeCloseTo(100 / 70, 12);
  });

  it('halves resistance and density over two equal leads: 0.136 mΩ, 0.714 A/mm²', () => {
    const pair = { place: 'main', form: 'cable', printedMm2: 70, lengthMm: 1000, count: 2, equal: true };
    const result = lead(pair, { continuousCurrentA: 100 });
    expect(result.resistanceMohm).toBeCloseTo(0.136, 9);
    expect(result.densityAPerMm2).toBeCloseTo(100 / 140, 12);
  });

  it('is 5 A/mm² in a copper link of 20 by 1 mm at 100 A, and 86.2 µΩ over 100 mm (IACS 0.017241)', () => {
    const link = { place: 'link', form: 'bar', widthMm: 20, thicknessMm: 1, lengthMm: 100, metal: 'copper' };
    const result = lead(link, { continuousCurrentA: 100 });
    expect(result.densityAPerMm2).toBe(5);
    expect(result.resistanceMohm).toBeCloseTo(0.086205, 9);
  });

  it('tells no density without the claim and no resistance without length, of brass, or of a bar of unknown metal', () => {
    const link = { place: 'link', form: 'bar', widthMm: 20, thicknessMm: 1, lengthMm: 100 };
    expect(lead({ ...link, metal: 'copper' })).toMatchObject({ densityAPerMm2: null, dropMv: null, heatW: null });
    expect(lead({ ...link, metal: 'brass' }, { continuousCurrentA: 100 }).resistanceMohm).toBeNull();
    expect(lead(link, { continuousCurrentA: 100 }).resistanceMohm).toBeNull();
    expect(lead(CABLE, { continuousCurrentA: 100 }).resistanceMohm).toBeNull();
  });
});
