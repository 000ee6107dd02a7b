import { describe, expect, it } from 'vitest';
import { riskLevelOf } from '../../src/calc/tables/risk-matrix.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading } from '../../src/grading/grading.ts';
import { likelihoodOf } from '../../src/schema/likelihood.ts';
import { builtIn, builtInItem } from './built-in.ts';
import { appliesThere, faultlessRecordBut } from './faultless-record.ts';

/**
 * MIL-STD-882E (11 May 2012), Table III, copied here for the two letters a failed grade leads to.
 * Row B probable, row C occasional; columns severity 1 catastrophic to 4 negligible.
 */
const TABLE_III = {
  B: { 1: 'high', 2: 'high', 3: 'serious', 4: 'medium' },
  C: { 1: 'high', 2: 'serious', 3: 'medium', 4: 'low' },
} as const;

/**
 * The faults that must never hide behind neat work. Letters by the rule of DESIGN §5 (safety failed: B), for the thin
 * sense leads C as DESIGN §4 states; k of DESIGN §5: high 0.40, serious 0.70. Each is put right in a workshop, the
 * missing cutoff by a terminal fuse outside, where one fits.
 */
const FAULTS = [
  { id: 'cell-vents', severity: 1, letter: 'B', risk: 'high', k: 0.4, verdict: 'workshopFirst' },
  { id: 'main-lead-pass-through', severity: 2, letter: 'B', risk: 'high', k: 0.4, verdict: 'workshopFirst' },
  { id: 'sense-lead-pass-through', severity: 2, letter: 'C', risk: 'serious', k: 0.7, verdict: 'workshopFirst' },
  { id: 'overcurrent-cutoff', severity: 1, letter: 'B', risk: 'high', k: 0.4, verdict: 'notAsItComes' },
] as const;

const FUSE_FITS = { fuseFits: true };

it('a pack sound throughout scores 100 at the factor 1, with no finding', () => {
  const grading = gradeRecord(builtIn, faultlessRecordBut(), FUSE_FITS);
  expect(grading.settled).toBe(true);
  expectOne(grading.score, 100);
  expectOne(grading.factor, 1);
  expect(grading.verdict).toEqual({ low: 'noFinding', high: 'noFinding', settled: true });
});

describe.each(FAULTS)('$id failed', ({ id, severity, letter, risk, k, verdict }) => {
  const item = builtInItem(id);

  it('is a safety item on the short route that always applies, with a hazard', () => {
    expect(item).toMatchObject({ safety: true, route: 'short', mayNotApply: [], hazard: expect.any(String) });
    expect(item.onlyIf).toBeUndefined();
  });

  it(`is severity ${severity} × ${letter}, ${risk} by Table III`, () => {
    expect(item.severity).toBe(severity);
    expect(likelihoodOf(item, 'failed')).toBe(letter);
    expect(TABLE_III[letter][severity]).toBe(risk);
    expect(riskLevelOf(severity, letter)).toBe(risk);
  });

  it(`multiplies an otherwise sound pack by ${k}: Build loses only its weight, the verdict is ${verdict}`, () => {
    const grading = gradeRecord(builtIn, faultlessRecordBut({ [id]: 'failed' }), FUSE_FITS);
    expectOne(grading.factor, k);
    expectOne(grading.build, buildWithout(id));
    expectOne(grading.score, buildWithout(id) * k);
    expect(grading.verdict).toEqual({ low: verdict, high: verdict, settled: true });
    expect(grading.findings).toEqual([
      expect.objectContaining({ itemId: id, grade: 'failed', likelihood: letter, risk, sure: true }),
    ]);
  });

  it(`multiplies by ${k} on the short route as well`, () => {
    const grading = gradeRecord(builtIn, { ...faultlessRecordBut({ [id]: 'failed' }), route: 'short' }, FUSE_FITS);
    expectOne(grading.factor, k);
  });
});

it('an occasional failure of the sense leads is stated with its reason, the only one of the 4 that differs', () => {
  const stated = FAULTS.filter(({ id }) => builtInItem(id).likelihood?.failed !== undefined);
  expect(stated.map(({ id }) => id)).toEqual(['sense-lead-pass-through']);
  expect(builtInItem('sense-lead-pass-through').likelihood?.because).toMatch(/\w+ \w+/);
});

it('a missing cutoff is workshop first where no fuse fits (another BMS), and open up to "not as it comes" until known', () => {
  const record = faultlessRecordBut({ 'overcurrent-cutoff': 'failed' });
  const noneFits = gradeRecord(builtIn, record, { fuseFits: false }).verdict;
  expect(noneFits).toEqual({ low: 'workshopFirst', high: 'workshopFirst', settled: true });
  expect(gradeRecord(builtIn, record).verdict).toEqual({ low: 'workshopFirst', high: 'notAsItComes', settled: false });
});

describe('several faults', () => {
  const vents = builtInItem('cell-vents');

  it('covered vents and one sensor taped over a vent are one hazard and multiply once, by 0.40', () => {
    const grading = gradingOf({ 'cell-vents': 'failed', 'sensor-on-vent': 'weak' });
    expectOne(grading.factor, 0.4);
    expect(grading.hazards.filter(({ risk }) => risk.low !== null)).toEqual([
      expect.objectContaining({
        hazardId: vents.hazard,
        itemIds: expect.arrayContaining(['cell-vents', 'sensor-on-vent']),
      }),
    ]);
  });

  it('both pass-throughs bare are one hazard and multiply once, by the 0.40 of the worse', () => {
    expectOne(gradingOf({ 'main-lead-pass-through': 'failed', 'sense-lead-pass-through': 'failed' }).factor, 0.4);
  });

  // 0.4 · 0.4 · 0.4: relief blocked, chafe, over-current.
  it('covered vents, a bare main pass-through and no cutoff are three hazards: 0.064', () => {
    const three = {
      'cell-vents': 'failed',
      'main-lead-pass-through': 'failed',
      'overcurrent-cutoff': 'failed',
    } as const;
    expectOne(gradingOf(three).factor, 0.064);
  });
});

function gradingOf(grades: Parameters<typeof faultlessRecordBut>[0]): Grading {
  return gradeRecord(builtIn, faultlessRecordBut(grades), FUSE_FITS);
}

/**
 * By hand, DESIGN §5: with all else sound and the failed item's credit 0, its zone keeps 1 − w/Σw, so
 * Build = 100 · (1 − W/ΣW · w/Σw).
 */
function buildWithout(id: string): number {
  const item = builtInItem(id);
  const inZone = builtIn.items.filter((other) => other.zone === item.zone && appliesThere(other));
  const itemWeights = inZone.reduce((sum, { weight }) => sum + weight, 0);
  const zoneWeights = builtIn.zones.reduce((sum, { weight }) => sum + weight, 0);
  const zoneWeight = builtIn.zones.find(({ id: zone }) => zone === item.zone)?.weight ?? Number.NaN;
  return 100 * (1 - (zoneWeight / zoneWeights) * (item.weight / itemWeights));
}

function expectOne(range: { low: number; high: number } | null, value: number): void {
  expect(range?.low).toBeCloseTo(value, 9);
  expect(range?.high).toBeCloseTo(value, 9);
}
