import { describe, expect, it } from 'vitest';
import { type Refusal, refusalsOf } from './expect-refused.ts';

describe('credits and factors', () => {
  it.each<Refusal>([
    ['a credit over 1', { 'credits.sound': 1.01 }, 'credits.sound', 'must lie within 0–1, got 1.01'],
    ['a credit under 0', { 'credits.failed': -0.01 }, 'credits.failed', 'must lie within 0–1, got -0.01'],
    [
      'a credit that rises',
      { 'credits.weak': 0.8 },
      'credits.weak',
      'must be less than the credit of passable, 0.75, got 0.8',
    ],
    [
      'a credit that stays',
      { 'credits.failed': 0.35 },
      'credits.failed',
      'must be less than the credit of weak, 0.35, got 0.35',
    ],
    ['k of high over serious', { 'k.high': 0.71 }, 'k.serious', 'must be no less than k of high, 0.71, got 0.7'],
    [
      'k of serious over medium',
      { 'k.serious': 0.96 },
      'k.medium',
      'must be no less than k of serious, 0.96, got 0.95',
    ],
    ['k of high under 0', { 'k.high': -0.1 }, 'k.high', 'must lie within 0–1, got -0.1'],
    ['k of medium over 1', { 'k.medium': 1.1 }, 'k.medium', 'must lie within 0–1, got 1.1'],
    ['k of low under 1', { 'k.low': 0.99 }, 'k.low', 'must be 1, got 0.99'],
  ])('refuses %s', (_, changes, place, reason) => {
    const problems = refusalsOf(changes);
    expect(problems).toContainEqual({ place, reason });
    // k of medium over 1 is also over k of low: two sentences about one number.
    expect(problems).toHaveLength(changes['k.medium'] === undefined ? 1 : 2);
  });
});
