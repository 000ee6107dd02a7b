import { expect, it } from 'vitest';
import { unsavedLines } from '../../src/app/unsaved-lines.ts';

it('names 4 changes with the person’s own words and figures, and leaves ids and stamps out', () => {
  const grade = { kind: 'grade', grade: 'weak', evidence: 'seen', note: 'turns by hand' };
  expect(
    unsavedLines([
      { puts: [{ subject: 'answer', part: 'terminal-posts', v: grade }], undoLabel: 'Terminal posts: weak' },
      { puts: [{ subject: 'nameplate', part: 'ratedCapacityAh', v: 100 }], undoLabel: 'Rated capacity' },
      {
        puts: [{ subject: 'drain', part: 'a', v: { currentMa: 12, on: '2026-11-25', made: null } }],
        undoLabel: 'Drain',
      },
      { puts: [{ subject: 'answer', part: 'handles', gone: true }], undoLabel: 'Handles: cleared' },
    ]),
  ).toEqual(['Terminal posts: weak: turns by hand', 'Rated capacity: 100', 'Drain: currentMa 12', 'Handles: cleared']);
});

it('goes by the subject where a change has no name', () => {
  expect(
    unsavedLines([{ puts: [{ subject: 'makeSafe', part: 'a', v: { passedAtMs: 1, packVoltageV: 26.4 } }] }]),
  ).toEqual(['makeSafe: packVoltageV 26.4']);
});
