import { describe, expect, it } from 'vitest';
import { overcurrentResult } from '../../../src/grading/live-tests/overcurrent-result.ts';
import { id, packOf, test } from './tested-pack.ts';

const PLATE = { continuousCurrentA: 100 };
const AT_ONCE = { currentA: 400, heldForS: 0.2, opened: true };
const DELAYED = { currentA: 220, heldForS: 6, opened: true };
const HEAT = { currentA: 800, heldForS: 40, opened: true, heatSeen: true, coolingNeeded: true };
const LEAD = { place: 'main', form: 'cable', printedMm2: 35, insulation: 'pvc', insulationDegC: 70 };

describe('behaviour', () => {
  it('is instant and delayed for a pack that opens at once at 400 A and after 6 s at 220 A', () => {
    const result = overcurrentResult(packOf(PLATE, test('trip', 2, AT_ONCE), test('trip', 1, DELAYED)));
    expect(result.behaviour).toMatchObject({ verdict: 'tripped', kinds: ['instant', 'delayed'], slowestS: 6 });
    expect(result.trips.map(({ currentA }) => currentA)).toEqual([220, 400]);
    expect(result.highestCarriedA).toBe(400);
  });

  it('is heat only for a pack that carries 800 A until heat opens it', () => {
    const { behaviour } = overcurrentResult(packOf(PLATE, test('trip', 1, HEAT)));
    expect(behaviour).toMatchObject({ verdict: 'heatOnly', heatAtA: 800, heatAfterS: 40, slowestS: null });
  });

  it('is none seen at 150 A held 60 s, and not tested at 140 A or without the claim', () => {
    const held = (currentA: number, plate: object) =>
      overcurrentResult(packOf(plate, test('trip', 1, { currentA, heldForS: 60, opened: false }))).behaviour.verdict;
    expect([held(150, PLATE), held(140, PLATE), held(150, {})]).toEqual(['noneSeen', 'notTested', 'notTested']);
  });

  it('is not tested without a trip, and then no current was carried', () => {
    const result = overcurrentResult(packOf(PLATE, test('lead', 1, LEAD)));
    expect(result).toMatchObject({ trips: [], highestCarriedA: null, withstand: null });
    expect(result.behaviour).toMatchObject({ verdict: 'notTested', slowestS: null });
  });
});

describe('main leads at the highest current carried', () => {
  it('stand 800 A for at least 25.3 s where they are 35 mm² in PVC: (115 · 35 / 800)² (BS 7671 Table 43.1)', () => {
    const { withstand } = overcurrentResult(packOf(PLATE, test('trip', 1, HEAT), test('lead', 1, LEAD)));
    expect(withstand).toMatchObject({ leadId: id(1), currentA: 800, eachA: 800, bound: 'atLeast' });
    expect(withstand).toMatchObject({ startDegC: 70, startFrom: 'insulationMark', finalDegC: 160 });
    expect((withstand?.timeS ?? 0) / ((115 * 35) / 800) ** 2).toBeCloseTo(1, 2);
  });

  it('stand it four times as long where they are two equal ones, and as long as one where they are not', () => {
    const timeS = (more: object) =>
      overcurrentResult(packOf(PLATE, test('trip', 1, HEAT), test('lead', 1, { ...LEAD, ...more }))).withstand?.timeS ??
      Number.NaN;
    expect(timeS({ count: 2, equal: true }) / timeS({})).toBeCloseTo(4, 9);
    expect(timeS({ count: 2, equal: false })).toBe(timeS({}));
  });

  it('count by the one that stands it shortest, and by its least area: strands of 7 mm at 0.70, 26.9 mm²', () => {
    const { printedMm2: _, ...unprinted } = LEAD;
    const thin = { ...unprinted, way: 'bareStrands', diameterMm: 7 };
    const { withstand } = overcurrentResult(
      packOf(PLATE, test('trip', 1, HEAT), test('lead', 1, LEAD), test('lead', 2, thin)),
    );
    expect(withstand?.leadId).toBe(id(2));
    expect((withstand?.timeS ?? 0) / ((115 * Math.PI * 12.25 * 0.7) / 800) ** 2).toBeCloseTo(1, 2);
  });

  it('start from the surroundings where the insulation is not marked, and cannot be told without either', () => {
    const { insulationDegC: _, ...unmarked } = LEAD;
    const stands = (lead: object) =>
      overcurrentResult(packOf(PLATE, test('trip', 1, HEAT), test('lead', 1, lead))).withstand;
    expect(stands({ ...unmarked, aroundDegC: 25 })).toMatchObject({ startDegC: 25, startFrom: 'surroundings' });
    expect(stands(unmarked)).toBeNull();
    const { insulation: __, ...bare } = LEAD;
    expect(stands(bare)).toBeNull();
    expect(stands({ ...LEAD, place: 'sense' })).toBeNull();
  });
});
