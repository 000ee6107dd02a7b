import { describe, expect, it } from 'vitest';
import { limitProblem } from '../../src/app/parts/limit-problem.ts';
import { shownLength, shownMass } from '../../src/app/parts/shown-number.ts';
import { NAMEPLATE_FIELDS, nameplateFields } from '../../src/schema/nameplate.ts';
import { fieldWords } from '../../src/text/fields.ts';

const said = (text: string | null) => text?.replace(/[\u00a0\u202f]/g, ' ') ?? null;

describe('a number beyond what a field keeps', () => {
  it('is told the most with its unit: 100 000 kg, 2000 V, 1000 cells', () => {
    const kg = shownMass('metric');
    expect(limitProblem(nameplateFields.massKg, 100_000, kg)).toBeNull();
    expect(said(limitProblem(nameplateFields.massKg, 1e308, kg))).toBe(
      'At most 100 000 kg can be kept here. It is not saved yet.',
    );
    expect(said(limitProblem(nameplateFields.nominalVoltageV, 2000.1, { unit: 'V' }))).toContain('At most 2000 V ');
    expect(said(limitProblem(nameplateFields.cellsInSeries, 1001, { unit: '' }))).toContain('At most 1000 can');
  });

  it('is told the least above zero where it is under a millionth', () => {
    expect(said(limitProblem(nameplateFields.ratedCapacityAh, 5e-324, { unit: 'Ah' }))).toBe(
      'At least 0.000001 Ah is needed here. It is not saved yet.',
    );
  });

  it('is told in inches so that the figure said fits: 100 000 mm are 3937.008 in, 3937 is said', () => {
    const inches = shownLength('imperial');
    expect(said(limitProblem(nameplateFields.lengthMm, 4000, inches))).toContain('At most 3937 in ');
    expect(limitProblem(nameplateFields.lengthMm, 3937, inches)).toBeNull();
  });

  it('has a sentence for every field of the Nameplate that is a number', () => {
    const refused = NAMEPLATE_FIELDS.map((field) => limitProblem(nameplateFields[field], 1e308, { unit: '' }));
    expect(refused.every((sentence) => sentence !== null)).toBe(true);
    expect(refused.filter((sentence) => sentence !== fieldWords.outOfRange)).toHaveLength(21);
  });
});
