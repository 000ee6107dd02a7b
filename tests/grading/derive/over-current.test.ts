import { describe, expect, it } from 'vitest';
import type { Trip } from '../../../src/schema/live-tests/trip.ts';
import { gradedItem, trips } from './tests-of.ts';

/** Facts of the trade as cases: common practice, no source. Limits of 10 and 60 s: the checklist's own. */
const item = 'overcurrent-cutoff';
const nameplate = { continuousCurrentA: 100 };
const NO_FUSE = { 'main-fuse-fitted': 'no' };
type Trial = Omit<Trip, 'made'>;
const opened = (currentA: number, heldForS: number, more: Partial<Trial> = {}): Trial => ({
  currentA,
  heldForS,
  opened: true,
  ...more,
});
const held = (currentA: number, heldForS: number): Trial => ({ currentA, heldForS, opened: false });

describe('the over-current cutoff of a 100 A pack without a fuse', () => {
  it.each([
    ['opens at once at 400 A, after 6 s at 220 A', [opened(400, 0.02), opened(220, 6)], 'sound'],
    ['opens after 10 s', [opened(220, 10)], 'sound'],
    ['opens after 11 s', [opened(220, 11)], 'passable'],
    ['opens after 60 s', [opened(220, 60)], 'passable'],
    ['carries 800 A until heat opens it', [opened(800, 45, { heatSeen: true, coolingNeeded: true })], 'failed'],
    ['opens after 94 s', [opened(180, 94)], 'failed'],
    ['carries 150 A for 60 s', [held(150, 60)], 'failed'],
  ])('%s', (_, list, expected) => {
    expect(gradedItem(item, { tests: trips(...list), nameplate, facts: NO_FUSE })).toMatchObject({
      grades: expected,
      because: 'measured',
      evidence: 'measured',
    });
  });

  it.each([
    ['carried 149 A for 60 s', [held(149, 60)]],
    ['carried 150 A for 59 s', [held(150, 59)]],
  ])('was not tested where it %s: all it has stays', (_, list) => {
    expect(gradedItem(item, { tests: trips(...list), nameplate, facts: NO_FUSE })).toMatchObject({
      grades: 'sound passable failed',
      because: 'unanswered',
      measured: null,
    });
  });
});

describe('a fuse fitted inside', () => {
  const tests = trips(held(150, 60));

  it('may open what was not reached: passable or failed', () => {
    const facts = { 'main-fuse-fitted': 'yes' };
    expect(gradedItem(item, { tests, nameplate, facts }).grades).toBe('passable failed');
  });

  it('not known of leaves the same', () => {
    expect(gradedItem(item, { tests, nameplate }).grades).toBe('passable failed');
  });

  it('does not excuse a pack that heat alone opened', () => {
    const heat = trips(opened(800, 45, { heatSeen: true, coolingNeeded: true }));
    expect(gradedItem(item, { tests: heat, nameplate, facts: { 'main-fuse-fitted': 'yes' } }).grades).toBe('failed');
  });

  it('judged by a person within what the trial leaves settles it: passable, seen', () => {
    const answer = { kind: 'grade', grade: 'passable', evidence: 'seen' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({
      grades: 'passable',
      because: 'answered',
      measured: { possible: ['passable', 'failed'], overrules: null },
    });
  });
});

describe('a grade against the trial', () => {
  const tests = trips(opened(220, 94));

  it('without a reason does not count: failed, as measured', () => {
    const answer = { kind: 'grade', grade: 'sound', evidence: 'seen' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({ grades: 'failed', because: 'measured' });
  });

  it('with a reason counts, and keeps what was measured beside it', () => {
    const answer = { kind: 'grade', grade: 'passable', evidence: 'seen', overrules: 'The load fell away.' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({
      grades: 'passable',
      because: 'answered',
      measured: { possible: ['failed'], overrules: 'The load fell away.' },
    });
  });

  it('with a reason but the same as measured overrules nothing', () => {
    const answer = { kind: 'grade', grade: 'failed', evidence: 'seen', overrules: 'Sure.' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({
      because: 'measured',
      measured: { overrules: null },
    });
  });

  it('told and overruling is still held to passable on a safety item', () => {
    const answer = { kind: 'grade', grade: 'sound', evidence: 'told', overrules: 'The maker says so.' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({ grades: 'passable', loweredByTold: true });
  });
});
