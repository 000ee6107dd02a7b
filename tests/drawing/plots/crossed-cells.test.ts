import { describe, expect, it } from 'vitest';
import { crossedCells } from '../../../src/drawing/plots/crossed-cells.ts';

const BOUNDS = { left: 0, top: 0, right: 90, bottom: 90 };

describe('crossedCells', () => {
  it('counts 10 squares of 3 units under a level line 30 units long', () => {
    const count = crossedCells(
      [
        [
          [0, 46],
          [29, 46],
        ],
      ],
      BOUNDS,
    );
    expect(count({ left: 0, top: 30, right: 89, bottom: 60 })).toBe(10);
  });

  it('counts 0 beside the line, and 2 where a box holds only its end', () => {
    const count = crossedCells(
      [
        [
          [0, 46],
          [29, 46],
        ],
      ],
      BOUNDS,
    );
    expect(count({ left: 0, top: 0, right: 89, bottom: 40 })).toBe(0);
    expect(count({ left: 25, top: 40, right: 60, bottom: 50 })).toBe(2);
  });

  it('counts a square once however many lines run through it', () => {
    const line: [number, number][] = [
      [1, 1],
      [2, 2],
    ];
    expect(crossedCells([line, line], BOUNDS)({ left: 0, top: 0, right: 10, bottom: 10 })).toBe(1);
  });
});
