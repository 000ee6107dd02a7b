import { describe, expect, it } from 'vitest';
import { afterGrade, afterNote, afterReading, afterReason, isAgainstMeasured } from '../../src/app/next-answer.ts';
import type { ItemResult } from '../../src/grading/grading.ts';
import type { Answer } from '../../src/schema/answer.ts';

const measured = (possible: ItemResult['possible']): ItemResult =>
  ({ measured: { possible, found: { alternatives: [] }, overrules: null } }) as unknown as ItemResult;
const READINGS: Answer = { kind: 'readings', values: { gap: 3 }, evidence: 'measured', note: 'plastic rule' };

describe('a sentence chosen', () => {
  it('is a grade, seen unless said otherwise, with the note kept', () => {
    const before: Answer = { kind: 'notSeen', reason: 'dark', note: 'n' };
    const grade = { grade: 'weak', evidence: null, because: null } as const;
    expect(afterGrade(before, undefined, grade)).toEqual({ kind: 'grade', grade: 'weak', evidence: 'seen', note: 'n' });
  });

  it('against a measurement keeps its reason, and what was told becomes seen', () => {
    const grade = { grade: 'failed', evidence: 'told', because: 'It jumps.' } as const;
    expect(afterGrade(undefined, measured(['sound']), grade)).toEqual({
      kind: 'grade',
      grade: 'failed',
      evidence: 'seen',
      overrules: 'It jumps.',
    });
  });

  it('over typed readings stands beside them, and goes when the measured sentence is chosen again', () => {
    const overruled = { grade: 'failed', evidence: 'seen', because: 'It jumps.' } as const;
    const after = afterGrade(READINGS, measured(['passable']), overruled);
    expect(after).toEqual({ ...READINGS, overruled: { grade: 'failed', because: 'It jumps.' } });
    expect(afterGrade(after, measured(['passable']), { grade: 'passable', evidence: null, because: null })).toEqual(
      READINGS,
    );
  });

  it('is against the measurement only where that leaves other grades: weak against passable or failed', () => {
    expect(isAgainstMeasured(measured(['passable', 'failed']), 'weak')).toBe(true);
    expect(isAgainstMeasured(measured(['passable', 'failed']), 'failed')).toBe(false);
    expect(isAgainstMeasured(undefined, 'weak')).toBe(false);
  });
});

describe('a box filled or emptied', () => {
  it('adds its value, keeping the others, the note and a grade against them', () => {
    const before: Answer = { ...READINGS, overruled: { grade: 'failed', because: 'b' } };
    expect(afterReading(before, 'width', 2)).toEqual({ ...before, values: { gap: 3, width: 2 } });
  });

  it('takes only its own value away; with the last one nothing is left but the note', () => {
    const two: Answer = { kind: 'readings', values: { gap: 3, width: 2 }, evidence: 'measured' };
    expect(afterReading(two, 'gap', null)).toEqual({ ...two, values: { width: 2 } });
    expect(afterReading(READINGS, 'gap', null)).toEqual({ kind: 'open', note: 'plastic rule' });
    expect(afterReading({ kind: 'readings', values: { gap: 3 }, evidence: 'measured' }, 'gap', null)).toBeNull();
  });
});

describe('a note, a reason', () => {
  it('changes the note alone; an emptied note of an open item leaves nothing', () => {
    expect(afterNote(READINGS, 'steel rule')).toEqual({ ...READINGS, note: 'steel rule' });
    expect(afterNote(READINGS, '')).toEqual({ kind: 'readings', values: { gap: 3 }, evidence: 'measured' });
    expect(afterNote(undefined, 'scratched?')).toEqual({ kind: 'open', note: 'scratched?' });
    expect(afterNote({ kind: 'open', note: 'x' }, '')).toBeNull();
  });

  it('leaves the item ungraded with its reason and its note', () => {
    expect(afterReason(READINGS, 'notSeen', 'dark')).toEqual({ kind: 'notSeen', reason: 'dark', note: 'plastic rule' });
  });
});
