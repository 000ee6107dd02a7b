import { expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { graded } from './answer-with.ts';
import { smallDefinition } from './small-definition.ts';

// lid-fit, tidy: no hazard · spacing weak: II × D medium · metal-floor weak: III × D medium · sensor failed: II × C
// serious · current-cut failed, safety: II × B high
it('lists six findings worst risk first, equal ones in definition order, those without a hazard last', () => {
  const { findings } = gradeRecord(smallDefinition, {
    route: 'whole',
    facts: {},
    answers: {
      'lid-fit': graded('weak'),
      spacing: graded('weak'),
      'metal-floor': graded('weak'),
      'current-cut': graded('failed'),
      sensor: graded('failed'),
      tidy: graded('failed'),
      vents: graded('passable'),
    },
  });
  expect(findings.map(({ itemId, risk, sure }) => [itemId, risk, sure])).toEqual([
    ['current-cut', 'high', true],
    ['sensor', 'serious', true],
    ['spacing', 'medium', true],
    ['metal-floor', 'medium', false],
    ['lid-fit', null, true],
    ['tidy', null, true],
  ]);
});
