import { describe, expect, it } from 'vitest';
import { type CutawayZone, cutaway } from '../../src/drawing/cutaway.ts';
import type { Drawing, TextMark } from '../../src/drawing/display-list.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import { drawingWords } from '../../src/text/drawings.ts';

const SIX = ['enclosure', 'cells', 'bms', 'sensors', 'wiring', 'vents'];
const zonesOf = (ids: string[], next = 'vents'): CutawayZone[] =>
  ids.map((zoneId) => ({
    zoneId,
    title: zoneId,
    progressText: '3 of 9',
    state: zoneId === next ? 'next' : 'todo',
  }));
const drawn = (cellsInSeries: number | null, widthPx = 358, zones = zonesOf(SIX)) =>
  cutaway({ cellsInSeries, zones, widthPx, alt: drawingWords.cutaway });

/** Cells are the only boxes taller than 60 units. */
const tallBoxes = ({ marks }: Drawing) =>
  marks.flatMap((mark) =>
    mark.kind === 'shape' && mark.shape.form === 'box' && mark.shape.height > 60 ? [mark.shape] : [],
  );
/** Vents are the only ellipses that are wider than high, or in thin cells the 4-high ones. */
const vents = ({ marks }: Drawing) =>
  marks.filter(
    (mark) =>
      mark.kind === 'shape' && mark.shape.form === 'ellipse' && mark.shape.ry === 4 && mark.stroke?.ink !== 'ground',
  );
const texts = ({ marks }: Drawing) => marks.filter((mark): mark is TextMark => mark.kind === 'text');

describe('cutaway', () => {
  it.each([1, 2, 4, 5, 8, 15, 16])('draws %d cells with a vent each when the nameplate says so', (count) => {
    const { drawing, cellsDrawn } = drawn(count);
    expect(tallBoxes(drawing)).toHaveLength(count);
    expect(vents(drawing)).toHaveLength(count);
    expect(cellsDrawn).toBe(count);
  });

  it('draws 4 cells while the number is unknown, and says that it is', () => {
    const { drawing } = drawn(null);
    expect(tallBoxes(drawing)).toHaveLength(4);
    expect(drawing.alt).toBe('Section of a pack with 4 cells, the number being unknown so far.');
  });

  it('draws 16 of 24 cells and owns up to it in words', () => {
    const { drawing } = drawn(24);
    expect(tallBoxes(drawing)).toHaveLength(16);
    expect(drawing.alt).toBe('Section of the pack. 16 of its 24 cells in series are drawn.');
  });

  it('keeps cells apart and at least 8 px wide with 16 of them on a phone 288 px across', () => {
    const cells = tallBoxes(drawn(16, 288).drawing);
    for (const [place, cell] of cells.entries()) {
      expect(cell.width).toBeGreaterThanOrEqual(8);
      const before = cells[place - 1];
      if (before !== undefined) expect(cell.x).toBeGreaterThan(before.x + before.width);
    }
  });

  it.each([288, 358, 700])(
    'gives each of six zones a touch area of 48 × 48 or more, none over another, at %d px',
    (widthPx) => {
      const { drawing, touchAreas } = drawn(8, widthPx);
      expect(touchAreas.map((area) => area.zoneId)).toEqual(SIX);
      for (const area of touchAreas) {
        expect(Math.min(area.width, area.height)).toBeGreaterThanOrEqual(48);
        expect(area.x).toBeGreaterThanOrEqual(0);
        expect(area.y).toBeGreaterThanOrEqual(0);
        expect(area.x + area.width).toBeLessThanOrEqual(drawing.width + 1e-9);
        expect(area.y + area.height).toBeLessThanOrEqual(drawing.height);
        for (const other of touchAreas) {
          if (other === area) continue;
          const apartX = area.x + area.width <= other.x + 1e-9 || other.x + other.width <= area.x + 1e-9;
          const apartY = area.y + area.height <= other.y || other.y + other.height <= area.y;
          expect(apartX || apartY).toBe(true);
        }
      }
    },
  );

  it('names 12 zones of a checklist of which the drawing knows only 6', () => {
    const ids = [...SIX, 'a', 'b', 'c', 'd', 'e', 'f'];
    const { drawing, touchAreas } = drawn(8, 358, zonesOf(ids));
    expect(touchAreas).toHaveLength(12);
    expect(new Set(touchAreas.map((area) => `${area.x}/${area.y}`)).size).toBe(12);
    expect(Math.max(...touchAreas.map((area) => area.y + area.height))).toBeLessThanOrEqual(drawing.height);
    expect(texts(drawing).map((text) => text.text)).toEqual(expect.arrayContaining(ids));
  });

  const OTHERS = ['chassis', 'front', 'ports', 'cells', 'switching', 'bars', 'air'];

  it.each([288, 358, 700])(
    'has a plan for 7 zones of which it knows 1: 7 areas of 48 × 48 or more, apart, at %d px',
    (widthPx) => {
      const { drawing, touchAreas, cellsDrawn } = drawn(16, widthPx, zonesOf(OTHERS, 'ports'));
      expect(cellsDrawn).toBe(0);
      expect(touchAreas.map((area) => area.zoneId)).toEqual(OTHERS);
      for (const area of touchAreas) {
        expect(Math.min(area.width, area.height)).toBeGreaterThanOrEqual(48);
        expect(area.x).toBeGreaterThanOrEqual(0);
        expect(area.x + area.width).toBeLessThanOrEqual(drawing.width);
        expect(area.y + area.height).toBeLessThanOrEqual(drawing.height);
        for (const other of touchAreas) {
          if (other === area) continue;
          const apartX = area.x + area.width <= other.x || other.x + other.width <= area.x;
          const apartY = area.y + area.height <= other.y || other.y + other.height <= area.y;
          expect(apartX || apartY).toBe(true);
        }
      }
      expect(texts(drawing).map((text) => text.text)).toEqual(OTHERS.flatMap((id) => [id, '3 of 9']));
      expect(drawing.alt).toBe('Plan of the pack from above, a compartment for each part that is looked at.');
    },
  );

  it.each([1, 2, 12])('has a plan for %d zones none of which it knows', (count) => {
    const ids = Array.from({ length: count }, (_, at) => `zone-${at}`);
    const { touchAreas } = drawn(null, 358, zonesOf(ids));
    expect(new Set(touchAreas.map(({ x, y }) => `${x}/${y}`)).size).toBe(count);
  });

  it('draws strong the compartment to do next and calm those that are done', () => {
    const states = (['next', 'done', 'todo'] as const).map((state, at) => ({ ...zonesOf(['a', 'b', 'c'])[at], state }));
    const { drawing } = drawn(8, 358, states as CutawayZone[]);
    const boxes = drawing.marks.flatMap((mark) =>
      mark.kind === 'shape' && mark.shape.form === 'box' && mark.stroke ? [mark.stroke] : [],
    );
    expect(boxes.map(({ ink, width }) => `${ink} ${width}`)).toEqual(['ink 2.6', 'line 1.2', 'muted 1.2']);
  });

  it('sets a title that is too long at 16 at 14 before it cuts it', () => {
    const zones = zonesOf(OTHERS).map((zone) => ({ ...zone, title: 'BMS and switching' }));
    const titles = texts(drawn(16, 358, zones).drawing).filter(({ text }) => text.startsWith('BMS'));
    // The last compartment goes across and has room.
    expect(titles.map(({ text, size }) => `${text} ${size}`)).toEqual([
      ...Array(6).fill('BMS and switching 14'),
      'BMS and switching 16',
    ]);
  });

  it('cuts a title of 120 letters to the width of its touch area', () => {
    const long = zonesOf(SIX).map((zone) => ({ ...zone, title: 'W'.repeat(120) }));
    const titles = texts(drawn(8, 358, long).drawing).filter((text) => text.text.startsWith('W'));
    expect(titles).toHaveLength(6);
    for (const title of titles) expect(textWidth(title.text, title)).toBeLessThanOrEqual(358 / 3);
  });

  it('frames the zone to do next, and only that one', () => {
    const frames = (next: string) =>
      drawn(8, 358, zonesOf(SIX, next)).drawing.marks.filter(
        (mark) => mark.kind === 'shape' && mark.shape.form === 'box' && mark.shape.height === 48,
      );
    for (const zoneId of SIX) expect(frames(zoneId)).toHaveLength(1);
    expect(frames('none')).toHaveLength(0);
  });

  it('draws finished zones calm: no ink in the enclosure once it is done', () => {
    const zones = zonesOf(SIX).map((zone) => ({ ...zone, state: 'done' as const }));
    const inkWords = texts(drawn(8, 358, zones).drawing).filter((text) => text.ink === 'ink');
    expect(inkWords).toHaveLength(0);
  });

  it('has an outline 2.4 wide', () => {
    const widths = drawn(8).drawing.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.stroke ? [mark.stroke.width] : [],
    );
    expect(widths).toContain(2.4);
  });
});
