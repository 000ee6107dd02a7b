import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/drawing/display-list.ts';
import { LID_GLYPH_HEIGHT, LID_GLYPH_WIDTH, lidCorners, lidGlyph } from '../../src/drawing/lid-glyph.ts';
import { GRADES } from '../../src/schema/grade.ts';

/** Angle of the lid's upper edge, clockwise positive, from its two corners: atan2 of its rise over its run. */
function slopeDeg(grade: (typeof GRADES)[number]): number {
  const [from, to] = lidCorners(grade);
  return (Math.atan2(to![1] - from![1], to![0] - from![0]) * 180) / Math.PI;
}

function hinge(grade: (typeof GRADES)[number]): [number, number] {
  const corners = lidCorners(grade);
  return [(corners[0]![0] + corners[3]![0]) / 2, (corners[0]![1] + corners[3]![1]) / 2];
}

const inks = (marks: Mark[]) => marks.flatMap((mark) => ('fill' in mark && mark.fill !== undefined ? [mark.fill] : []));
const dashed = (marks: Mark[]) => marks.filter((mark) => 'stroke' in mark && mark.stroke?.dash !== undefined);

describe('lidGlyph', () => {
  // Angles: look/LOOK.md, "Lid glyph".
  it.each([
    ['sound', 0],
    ['passable', -13],
    ['weak', -38],
    ['failed', 14],
  ] as const)('turns the lid of %s by %d degrees', (grade, angleDeg) => {
    expect(slopeDeg(grade)).toBeCloseTo(angleDeg, 9);
  });

  it('swings the ajar and the tilted lid about the left end of the closed one', () => {
    for (const grade of ['passable', 'weak'] as const) {
      expect(hinge(grade)[0]).toBeCloseTo(hinge('sound')[0], 9);
      expect(hinge(grade)[1]).toBeCloseTo(hinge('sound')[1], 9);
    }
  });

  it('lifts the lid that is off clear of the tub: its lowest corner is above the closed lid’s upper edge', () => {
    const lowest = Math.max(...lidCorners('failed').map(([, y]) => y));
    expect(lowest).toBeLessThan(lidCorners('sound')[0]![1]);
  });

  it('keeps every lid, with its 2 px outline, inside 26 × 28', () => {
    for (const corner of GRADES.flatMap(lidCorners)) {
      expect(corner[0]).toBeGreaterThanOrEqual(1);
      expect(corner[0]).toBeLessThanOrEqual(LID_GLYPH_WIDTH - 1);
      expect(corner[1]).toBeGreaterThanOrEqual(1);
      expect(corner[1]).toBeLessThanOrEqual(LID_GLYPH_HEIGHT - 1);
    }
    expect([LID_GLYPH_WIDTH, LID_GLYPH_HEIGHT]).toEqual([26, 28]);
  });

  it.each(GRADES)('has one colour, inside the lid, and 2 px ink outlines: %s', (grade) => {
    const { marks } = lidGlyph(grade);
    expect(inks(marks)).toEqual([grade]);
    expect(marks.map((mark) => ('stroke' in mark ? [mark.stroke?.ink, mark.stroke?.width] : null))).toEqual([
      ['ink', 2],
      ['ink', 2],
    ]);
  });

  it('dashes tub and lid and shows no colour when not seen', () => {
    const { marks } = lidGlyph('notSeen');
    expect(inks(marks)).toEqual([]);
    expect(dashed(marks)).toHaveLength(2);
    expect(marks).toHaveLength(2);
  });

  it('shows no colour and no dash when the item does not apply', () => {
    const { marks } = lidGlyph('doesNotApply');
    expect(inks(marks)).toEqual([]);
    expect(dashed(marks)).toHaveLength(0);
  });

  it('draws six outcomes in six different ways', () => {
    const all = [...GRADES, 'notSeen', 'doesNotApply'] as const;
    expect(new Set(all.map((outcome) => JSON.stringify(lidGlyph(outcome).marks))).size).toBe(6);
  });
});
