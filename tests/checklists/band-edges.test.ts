import { expect, it } from 'vitest';
import { above, below, exactly, type Figure } from '../../src/grading/derive/figure.ts';
import { gradesOf } from '../../src/grading/derive/grades-of.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { builtIn } from './built-in.ts';

type Edge = [item: string, name: string, at: number | Figure, grades: string];

/** Typed off the sentences of 1.1.0, not off its bands: each limit, and just past it. */
const EDGES: Edge[] = [
  ...edges('dead-cell', 'any', { sound: [2], failed: [1.999, 0, -0.1] }),
  ...edges('cell-voltages', 'rested', {
    sound: [3.2, 3.4],
    passable: [3.199, 3, 3.401, 3.5],
    weak: [2.999, 2.5, 3.501, 3.65],
    failed: [2.499, 3.651],
  }),
  ...edges('cell-voltages', 'justEmptied', { sound: [3, 3.4], passable: [2.999, 2.5, 3.5], failed: [2.499, 3.651] }),
  ...edges('cell-voltages', 'nearFull', { sound: [3.2, 3.5], passable: [3, 3.501, 3.65], failed: [2.499, 3.651] }),
  ...edges('cell-spread', 'rested', { sound: [0, 10], passable: [10.1, 30], weak: [30.1, 50], failed: [50.1] }),
  ...edges('cell-spread', 'nearFull', { sound: [0, 50], passable: [50.1, 100], weak: [100.1, 200], failed: [200.1] }),
  ...edges('cell-resistances', 'any', { sound: [0, 10], passable: [10.1, 25], weak: [25.1, 50], failed: [50.1] }),
  ...edges('link-section', 'copper', { sound: [5], passable: [5.1, 8], weak: [8.1, 12], failed: [12.1] }),
  ...edges('link-section', 'aluminium', { sound: [3], passable: [3.1, 5], weak: [5.1, 7], failed: [7.1] }),
  ...edges('energy-claim', 'any', { sound: [-20, 0], passable: [0.1, 5], weak: [5.1, 20], failed: [20.1] }),
  ...edges('overcurrent-cutoff', 'opened', { sound: [0, 10], passable: [10.1, 60], failed: [60.1, above(60)] }),
  ...edges('charge-voltage-cutoff', 'any', {
    sound: [3.65],
    passable: [3.651, 3.75],
    weak: [3.751, 3.799],
    failed: [3.8, above(3.8)],
  }),
  ...edges('charge-current-cutoff', 'any', {
    sound: [1, 1.25],
    passable: [1.26, 1.5],
    weak: [1.51, 2],
    failed: [2.01, above(2)],
  }),
  ...edges('low-voltage-cutoff', 'any', {
    sound: [2.5],
    passable: [2.499, 2.3],
    weak: [2.299, 2.001],
    failed: [2, below(2)],
  }),
  ...edges('low-temperature-charge-cutoff', 'blocked', {
    sound: [0, 5],
    passable: [-0.1, -5],
    weak: [-5.1, -10],
    failed: [-10.1, below(-10)],
  }),
  ...edges('high-temperature-cutoff', 'withSwitch', { sound: [65], passable: [65.1, 80], weak: [80.1, above(80)] }),
  ...edges('high-temperature-cutoff', 'withoutSwitch', {
    sound: [65],
    passable: [65.1, 80],
    failed: [80.1, above(80)],
  }),
  ...edges('balancing', 'any', { sound: [0.5], passable: [0.49, 0.2], weak: [0.19, 0.01], failed: [0] }),
  ...edges('standby-drain', 'any', { sound: [365], passable: [364, 182], weak: [181, 60], failed: [59, 0] }),
  ...edges('read-out', 'free', { sound: [5], passable: [4.9, 0] }),
  ...edges('sensor-reading', 'any', { sound: [0, 2], passable: [2.1, 4], weak: [4.1, 8], failed: [8.1] }),
  ...edges('bms-voltage-reading', 'any', { sound: [0, 5], passable: [5.1, 15], weak: [15.1, 30], failed: [30.1] }),
  ...edges('terminal-rise', 'any', { sound: [0, 20], passable: [20.1, 35], weak: [35.1, 50], failed: [50.1] }),
  ...edges('main-lead-section', 'any', { sound: [100], passable: [99.9, 80], weak: [79.9, 67], failed: [66.9, 0] }),
  ...edges('vent-headroom', 'any', { sound: [10], passable: [9.9, 5], weak: [4.9, 2], failed: [1.9, 0] }),
];

it.each(EDGES)('%s, %s, at %o: %s', (itemId, name, at, expected) => {
  const figure = typeof at === 'number' ? exactly(at) : at;
  const { bands, grades } = read(itemId);
  const found = gradesOf(bands, { alternatives: [[{ case: name, figure }]] }, Object.keys(grades) as Grade[]);
  expect(found.join(' ')).toBe(expected);
});

it('holds every item with bands that take a figure', () => {
  const withFigures = builtIn.items.flatMap(({ id, measure, derive }) =>
    Object.entries(measure?.bands ?? derive?.bands ?? {}).flatMap(([name, list]) =>
      list.length > 1 ? [`${id} ${name}`] : [],
    ),
  );
  expect([...new Set(EDGES.map(([item, name]) => `${item} ${name}`))].toSorted()).toEqual(withFigures.toSorted());
});

function edges(item: string, name: string, by: Partial<Record<Grade, (number | Figure)[]>>): Edge[] {
  return Object.entries(by).flatMap(([grade, list]) => list.map((at): Edge => [item, name, at, grade]));
}

function read(itemId: string) {
  const item = builtIn.items.find(({ id }) => id === itemId);
  const bands = item?.measure?.bands ?? item?.derive?.bands;
  if (item === undefined || bands === undefined) throw new Error(`${itemId} has no bands`);
  return { bands, grades: item.grades };
}
