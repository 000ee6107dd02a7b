import { describe, expect, it } from 'vitest';
import { conductorFromPhoto } from '../../src/calc/conductor-from-photo.ts';

function area(seen: Parameters<typeof conductorFromPhoto>[0]) {
  const found = conductorFromPhoto(Object.freeze(seen));
  if (!found.ok) throw new Error(found.because);
  return found;
}

describe('conductorFromPhoto', () => {
  it('takes a printed size as it is: 16 mm², and 33.63 mm² for AWG 2 (ASTM B258, 0.2576 in)', () => {
    expect(area({ way: 'printed', printedMm2: 16 })).toEqual({
      ok: true,
      areaMm2: 16,
      leastMm2: 16,
      mostMm2: 16,
      by: 'printed',
    });
    expect(area({ way: 'printed', gauge: 2 }).areaMm2).toBeCloseTo((Math.PI / 4) * (0.2576 * 25.4) ** 2, 1);
  });

  it('gives π/4 · 36 · 0.75 = 21.21 mm², 19.79 to 22.62, for bare strands 6 mm across', () => {
    const { areaMm2, leastMm2, mostMm2, by } = area({ way: 'bareStrands', diameterMm: 6 });
    expect(areaMm2).toBeCloseTo(21.2058, 4);
    expect(leastMm2).toBeCloseTo(19.792, 4);
    expect(mostMm2).toBeCloseTo(22.6195, 4);
    expect(by).toBe('bareStrands');
  });

  // Closed form: round bundles of 1 + 6 + 12 + … equal strands of diameter d are 3d, 5d, 7d across.
  it.each([
    [7, 3],
    [19, 5],
    [37, 7],
  ])('has the metal of %d strands of 1 mm, %d mm across, within its bounds', (strands, diameterMm) => {
    const { leastMm2, mostMm2 } = area({ way: 'bareStrands', diameterMm });
    const metalMm2 = (strands * Math.PI) / 4;
    expect(metalMm2).toBeGreaterThan(leastMm2);
    expect(metalMm2).toBeLessThan(mostMm2);
  });

  it('widens with the uncertainty of the diameter: 6 ± 0.3 mm is ± √(6.67² + 10²) = 12.02 %', () => {
    const { areaMm2, leastMm2, mostMm2 } = area({ way: 'bareStrands', diameterMm: 6, diameterUncertaintyMm: 0.3 });
    expect(mostMm2 / areaMm2 - 1).toBeCloseTo(0.1202, 4);
    expect(1 - leastMm2 / areaMm2).toBeCloseTo(0.1202, 4);
    expect(area({ way: 'bareStrands', diameterMm: 1, diameterUncertaintyMm: 2 }).leastMm2).toBe(0);
  });

  it('gives no area, and so no current, over the insulation', () => {
    expect(conductorFromPhoto({ way: 'overInsulation', diameterMm: 9 })).toEqual({
      ok: false,
      because: 'overInsulation',
    });
    expect(conductorFromPhoto({ way: 'overInsulation' })).toEqual({ ok: false, because: 'overInsulation' });
  });

  it.each([
    { way: 'printed', printedMm2: 0 },
    { way: 'printed', gauge: 60 },
    { way: 'bareStrands', diameterMm: -1 },
    { way: 'bareStrands', diameterMm: 6, diameterUncertaintyMm: -0.1 },
  ] as const)('refuses %o', (seen) => {
    expect(() => conductorFromPhoto(seen)).toThrow(RangeError);
  });
});
