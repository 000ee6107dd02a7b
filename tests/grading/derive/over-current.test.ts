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

/** 1.5 × the claim of 100 A is 150 A; below it a trial is not of a current far above the rating (DESIGN §6, our choice). */
describe('what one trial opened, another may not', () => {
  it.each([
    ['opens at 300 A after 5 s, yet carried 400 A for 30 s', [opened(300, 5), held(400, 30)], 'passable failed'],
    ['opens at 300 A after 5 s, yet carried 400 A for 60 s', [opened(300, 5), held(400, 60)], 'failed'],
    ['opens at once at 600 A, yet carried 150 A for 60 s', [opened(600, 0.1), held(150, 60)], 'failed'],
    [
      'opens at 600 A after 10 s, and carried 300 A for the same 10 s',
      [opened(600, 10), held(300, 10)],
      'passable failed',
    ],
    ['opens at 220 A after 6 s, and was let go after 5 s at 300 A', [opened(220, 6), held(300, 5)], 'sound'],
    ['opens at once at 400 A, and carried 149 A for an hour', [opened(400, 0.1), held(149, 3600)], 'sound'],
    ['opens at once at 400 A, and at 120 A after 90 s', [opened(400, 0.1), opened(120, 90)], 'sound'],
  ])('%s', (_, list, expected) => {
    expect(gradedItem(item, { tests: trips(...list), nameplate, facts: NO_FUSE }).grades).toBe(expected);
  });

  it.each([
    ['a trip at 120 A after 90 s', [opened(120, 90)]],
    ['a trip at 149 A after 2 s', [opened(149, 2)]],
  ])('%s tells nothing of 150 A and more', (_, list) => {
    expect(gradedItem(item, { tests: trips(...list), nameplate, facts: NO_FUSE }).measured).toBeNull();
  });

  it('without a claim no trip is known to be far above it, but heat is heat', () => {
    expect(gradedItem(item, { tests: trips(opened(60, 5)), facts: NO_FUSE }).measured).toBeNull();
    const heat = trips(opened(800, 45, { heatSeen: true, coolingNeeded: true }), opened(900, 1));
    expect(gradedItem(item, { tests: heat, facts: NO_FUSE }).grades).toBe('failed');
    expect(gradedItem(item, { tests: trips(opened(60, 5, { heatSeen: true })) }).measured).toBeNull();
  });
});

describe('heat that was noted only in part', () => {
  it.each([
    ['seen, came back by cooling', { heatSeen: true, recovery: 'cooling' }, 'failed'],
    ['seen, cooling not said', { heatSeen: true }, 'sound failed'],
    ['not said, came back only cool', { coolingNeeded: true }, 'sound failed'],
    ['seen, no cooling needed', { heatSeen: true, coolingNeeded: false }, 'sound'],
    ['neither said', {}, 'sound'],
  ] as const)('%s: %s', (_, more, expected) => {
    expect(gradedItem(item, { tests: trips(opened(300, 8, more)), nameplate, facts: NO_FUSE }).grades).toBe(expected);
  });
});

describe('a fuse fitted inside', () => {
  it('may be what opened a pack that did not come back: sound or passable', () => {
    const blown = trips(opened(400, 2, { recovery: 'didNot' }));
    expect(gradedItem(item, { tests: blown, nameplate, facts: { 'main-fuse-fitted': 'yes' } }).grades).toBe(
      'sound passable',
    );
    expect(gradedItem(item, { tests: blown, nameplate, facts: NO_FUSE }).grades).toBe('sound');
  });

  it('may open what was carried at 1.5 times, although a harder current was opened at once: passable or failed', () => {
    const both = trips(opened(600, 0.1), held(150, 60));
    expect(gradedItem(item, { tests: both, nameplate, facts: { 'main-fuse-fitted': 'yes' } }).grades).toBe(
      'passable failed',
    );
  });

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

  it('told alone never counts against a trial, whatever the reason given: failed, as measured', () => {
    const answer = { kind: 'grade', grade: 'sound', evidence: 'told', overrules: 'The maker says so.' } as const;
    expect(gradedItem(item, { tests, nameplate, answer })).toMatchObject({ grades: 'failed', because: 'measured' });
  });
});
