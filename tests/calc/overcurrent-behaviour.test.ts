import { describe, expect, it } from 'vitest';
import { type OvercurrentTrip, overcurrentBehaviour } from '../../src/calc/overcurrent-behaviour.ts';

// Facts of the trade: common practice, no source.
const trip = (currentA: number, heldForS: number, more: Partial<OvercurrentTrip> = {}): OvercurrentTrip =>
  Object.freeze({ currentA, heldForS, opened: true, heatSeen: false, coolingNeeded: false, ...more });
const held = (currentA: number, heldForS: number) => trip(currentA, heldForS, { opened: false });
const hot = { heatSeen: true, coolingNeeded: true };
const behaviour = (trips: OvercurrentTrip[], continuousCurrentA: number | null = 100) =>
  overcurrentBehaviour({ trips: Object.freeze(trips), continuousCurrentA });

it('calls opening at once at 400 A and after 8 s at 220 A instant and delayed, slowest 8 s at 220 A', () => {
  expect(behaviour([trip(220, 8), trip(400, 0.05), held(120, 600)])).toEqual({
    kinds: ['instant', 'delayed'],
    verdict: 'tripped',
    slowestS: 8,
    slowestAtA: 220,
    heatAtA: null,
    heatAfterS: null,
    highestHeldA: 120,
    highestHeldForS: 600,
    longestHeldForS: 600,
    longestHeldAtA: 120,
    tellingHeldForS: null,
  });
});

it('calls carrying 800 A until heat opens it, after 45 s, heat only', () => {
  expect(behaviour([trip(800, 45, hot)], 200)).toEqual({
    kinds: ['heatOnly'],
    verdict: 'heatOnly',
    slowestS: null,
    slowestAtA: null,
    heatAtA: 800,
    heatAfterS: 45,
    highestHeldA: null,
    highestHeldForS: null,
    longestHeldForS: null,
    longestHeldAtA: null,
    tellingHeldForS: null,
  });
});

describe('kinds, on each limit and just past it', () => {
  it.each([
    ['1 s is at once', trip(200, 1), 'instant'],
    ['1.01 s is delayed', trip(200, 1.01), 'delayed'],
    ['60 s is delayed', trip(200, 60), 'delayed'],
    ['60.1 s is heat', trip(200, 60.1), 'heatOnly'],
    ['heat seen and cooling needed is heat, however soon', trip(200, 0.5, hot), 'heatOnly'],
    ['heat seen alone is not', trip(200, 20, { heatSeen: true }), 'delayed'],
    ['cooling needed alone is not', trip(200, 20, { coolingNeeded: true }), 'delayed'],
  ])('%s', (_name, tried, kind) => {
    expect(behaviour([tried]).kinds).toEqual([kind]);
  });
});

describe('none seen', () => {
  it.each([
    ['150 A held 60 s over a claim of 100 A', [held(150, 60)], 100, 'noneSeen'],
    ['149 A is too little', [held(149, 600)], 100, 'notTested'],
    ['59 s is too short', [held(300, 59)], 100, 'notTested'],
    ['without a claim nothing is told', [held(300, 600)], null, 'notTested'],
    ['nothing tried', [], 100, 'notTested'],
    ['an opening settles it', [held(150, 60), trip(300, 2)], 100, 'tripped'],
    ['heat settles it', [held(150, 60), trip(300, 90)], 100, 'heatOnly'],
    ['heat at 149 A may be slow: not tested at 150 A', [trip(149, 90)], 100, 'notTested'],
    ['heat at 150 A is', [trip(150, 90)], 100, 'heatOnly'],
    ['heat at any current is, where there is no claim', [trip(20, 90)], null, 'heatOnly'],
    ['a current trip beside heat is a trip', [trip(500, 0.1), trip(200, 90)], 100, 'tripped'],
  ] as const)('%s', (_name, trips, claim, verdict) => {
    expect(behaviour([...trips], claim).verdict).toBe(verdict);
  });
});

describe('the longest wait', () => {
  it('leaves out trips under 1.5 × the claim, and heat: 8 s at 220 A', () => {
    const found = behaviour([trip(140, 50), trip(220, 8), trip(300, 70), trip(400, 0.1)]);
    expect([found.slowestS, found.slowestAtA]).toEqual([8, 220]);
    expect([found.heatAtA, found.heatAfterS]).toEqual([300, 70]);
  });

  it('counts a trip at just 1.5 × the claim', () => {
    expect(behaviour([trip(150, 30)]).slowestS).toBe(30);
  });

  it('takes every trip but heat where there is no claim: 50 s at 140 A', () => {
    const found = behaviour([trip(140, 50), trip(220, 8), trip(300, 70)], null);
    expect([found.slowestS, found.slowestAtA]).toEqual([50, 140]);
  });

  it('has none where all trips were under 1.5 × the claim', () => {
    expect(behaviour([trip(120, 5)])).toMatchObject({ verdict: 'tripped', slowestS: null, slowestAtA: null });
  });

  it('names the higher current of two equal waits', () => {
    expect(behaviour([trip(200, 8), trip(260, 8)]).slowestAtA).toBe(260);
  });
});

it('tells the highest and the longest carried apart: 180 A for 20 s, 110 A for 1800 s', () => {
  expect(behaviour([held(180, 20), held(110, 1800), held(100, 1800), held(180, 10)])).toMatchObject({
    highestHeldA: 180,
    highestHeldForS: 20,
    longestHeldForS: 1800,
    longestHeldAtA: 110,
  });
});

it('tells the longest carried at 1.5 × the claim or more apart: 45 s at 150 A, not 600 s at 149 A', () => {
  expect(behaviour([held(150, 45), held(400, 10), held(149, 600)]).tellingHeldForS).toBe(45);
  expect(behaviour([held(400, 10)], null).tellingHeldForS).toBeNull();
});

it.each([
  ['no current', [trip(0, 1)], 100],
  ['a negative time', [trip(100, -1)], 100],
  ['a time that is not a number', [trip(100, Number.NaN)], 100],
  ['a claim of nothing', [trip(100, 1)], 0],
])('refuses bad input: %s', (_name, trips, claim) => {
  expect(() => behaviour(trips, claim)).toThrow(RangeError);
});
