import { describe, expect, it } from 'vitest';
import { exactly, type Figure } from '../../src/grading/derive/figure.ts';
import { gradesOf } from '../../src/grading/derive/grades-of.ts';
import type { Item } from '../../src/schema/checklist.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { admittedFile, itemOf } from './admitted-file.ts';
import { builtIn } from './built-in.ts';

const rack = admittedFile('lfp-rack/0.1.0');
const { items, zones, hazards, facts } = rack;
const inFirst = new Map(builtIn.items.map((item) => [item.id, item]));
const shared = items.filter(({ id }) => inFirst.has(id));

describe('the second checklist, lfp-rack', () => {
  it('is a draft', () => {
    expect(rack.status).toBe('draft');
  });

  it('has 15–25 items, at least 10 of them its own, 15–20 on the short route and 5–12 safety', () => {
    expectWithin(items.length, 15, 25);
    expectWithin(items.length - shared.length, 10, 25);
    expectWithin(items.filter(({ route }) => route === 'short').length, 15, 22);
    expectWithin(items.filter(({ safety }) => safety).length, 5, 12);
  });

  it('has 7 zones, 6 of which the first checklist does not have', () => {
    const known = new Set(builtIn.zones.map(({ id }) => id));
    expect(zones).toHaveLength(7);
    expect(zones.filter(({ id }) => !known.has(id))).toHaveLength(6);
  });

  it('has hazards and facts of its own: 3 and 2', () => {
    expect(newIn(hazards, builtIn.hazards)).toEqual(['chassis-live', 'inrush', 'charger-uninformed']);
    expect(newIn(facts, builtIn.facts)).toEqual(['sold-for-parallel', 'chassis-closed']);
  });

  it('asks of an item it shares with the first the very same: all but its zone', () => {
    expect(shared.length).toBeGreaterThanOrEqual(10);
    for (const item of shared) expect(meaningOf(item)).toEqual(meaningOf(inFirst.get(item.id)));
  });

  it('gives a hazard it shares the same harm, and a fact the same question and choices', () => {
    for (const hazard of hazards) {
      const first = builtIn.hazards.find(({ id }) => id === hazard.id);
      if (first) expect(hazard).toEqual(first);
    }
    for (const { id, ask, choices, state } of facts) {
      const first = builtIn.facts.find((one) => one.id === id);
      if (first)
        expect({ ask, choices, state }).toEqual({ ask: first.ask, choices: first.choices, state: first.state });
    }
  });

  it('reads 3 items from values typed in and 4 from live tests', () => {
    const kinds = items.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'measure')).toHaveLength(3);
    expect(kinds.filter((kind) => kind === 'derive')).toHaveLength(4);
  });
});

/** Typed off the sentences, not off the bands: each limit, and just past it. */
const EDGES: [item: string, at: number, grade: Grade][] = [
  ...edges('earth-bond', { sound: [0, 0.1], passable: [0.11, 0.5], weak: [0.51, 2], failed: [2.1, 1e6] }),
  ...edges('chassis-isolation', { sound: [52, 45], passable: [44.9, 25], weak: [24.9, 5], failed: [4.9, 0] }),
  ...edges('bus-bar-gap', { sound: [10], passable: [9.9, 5], weak: [4.9, 3], failed: [2.9, 0] }),
];

it.each(EDGES)('%s at %f: %s', (itemId, at, expected) => {
  const { measure, grades } = itemOf(rack, itemId);
  const figure: Figure = exactly(at);
  const found = gradesOf(
    measure?.bands ?? {},
    { alternatives: [[{ case: 'any', figure }]] },
    Object.keys(grades) as Grade[],
  );
  expect(found).toEqual([expected]);
});

/** Closed form: a leak of R across a meter of 10 MΩ shows V = E · 10 / (10 + R), so R = 10 MΩ · (E − V) / V. */
it('45, 25 and 5 V below 52 V are 64, 9 and 1 MΩ through a meter of 10 MΩ, as its basis says', () => {
  const leakMohm = (belowV: number) => (10 * belowV) / (52 - belowV);
  expect([45, 25, 5].map((belowV) => Math.round(leakMohm(belowV)))).toEqual([64, 9, 1]);
});

function edges(item: string, by: Partial<Record<Grade, number[]>>): [string, number, Grade][] {
  return Object.entries(by).flatMap(([grade, list]) =>
    list.map((at): [string, number, Grade] => [item, at, grade as Grade]),
  );
}

/** What an answer means: everything but where it stands in the pack. */
function meaningOf(item: Item | undefined): Partial<Item> {
  const { zone: _, ...meaning } = item ?? {};
  return meaning;
}

function newIn(list: readonly { id: string }[], first: readonly { id: string }[]): string[] {
  return list.map(({ id }) => id).filter((id) => !first.some((one) => one.id === id));
}

function expectWithin(count: number, least: number, most: number): void {
  expect(count).toBeGreaterThanOrEqual(least);
  expect(count).toBeLessThanOrEqual(most);
}
