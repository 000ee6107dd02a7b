import { describe, expect, it } from 'vitest';
import type { TextMark } from '../../../src/drawing/display-list.ts';
import { crossedCells } from '../../../src/drawing/plots/crossed-cells.ts';
import { labelRoom, textBox } from '../../../src/drawing/plots/label-room.ts';
import { type LabelInput, labelAt } from '../../../src/drawing/plots/place-label.ts';

const PANEL = { left: 0, top: 0, right: 200, bottom: 100 };
/** Four figures at size 12 are 28.8 units wide. */
const input = (change: Partial<LabelInput> = {}): LabelInput => ({
  text: '2048',
  face: { size: 12, weight: 400 },
  points: [[100, 50]],
  panel: PANEL,
  room: labelRoom(PANEL),
  crossed: crossedCells([], PANEL),
  ...change,
});
const word = (marks: ReturnType<typeof labelAt>) => marks.find((mark): mark is TextMark => mark.kind === 'text')!;

describe('labelAt', () => {
  it('stands within 11 units of its point where nothing is in the way, and needs no leader', () => {
    const marks = labelAt(input());
    expect(marks).toHaveLength(1);
    const box = textBox(word(marks));
    const across = Math.max(box.left - 100, 0, 100 - box.right);
    const down = Math.max(box.top - 50, 0, 50 - box.bottom);
    expect(Math.hypot(across, down)).toBeGreaterThanOrEqual(6);
    expect(Math.hypot(across, down)).toBeLessThan(11);
  });

  it('goes 20 units and more away to cover none of 15 lines round its point', () => {
    const lines = Array.from({ length: 15 }, (_, place): [number, number][] => [
      [70, 22 + place * 4],
      [130, 22 + place * 4],
    ]);
    const crossed = crossedCells(lines, PANEL);
    const box = textBox(word(labelAt(input({ crossed }))));
    expect(crossed(box)).toBe(0);
  });

  it('leads with a thin line when the nearest free place is far off', () => {
    const room = labelRoom(PANEL);
    room.keepOff({ left: 40, top: 0, right: 160, bottom: 100 });
    const [leader, name] = labelAt(input({ room }));
    expect(leader).toMatchObject({ kind: 'line', stroke: { width: 0.8 } });
    expect(name?.kind).toBe('text');
  });

  it('names the one of two points that has room', () => {
    const room = labelRoom(PANEL);
    room.keepOff({ left: 0, top: 0, right: 120, bottom: 100 });
    const box = textBox(
      word(
        labelAt(
          input({
            room,
            points: [
              [20, 50],
              [160, 50],
            ],
          }),
        ),
      ),
    );
    expect(Math.abs((box.left + box.right) / 2 - 160)).toBeLessThan(30);
  });

  it('gives no mark where there is no room at all, nor for no words', () => {
    const room = labelRoom(PANEL);
    room.keepOff(PANEL);
    expect(labelAt(input({ room }))).toEqual([]);
    expect(labelAt(input({ text: '' }))).toEqual([]);
  });

  it('shortens a name wider than 0.6 of the panel, 120 units', () => {
    const name = word(labelAt(input({ text: 'W'.repeat(40) })));
    expect(name.text.endsWith('…')).toBe(true);
    const box = textBox(name);
    expect(box.right - box.left).toBeLessThanOrEqual(120);
  });
});
