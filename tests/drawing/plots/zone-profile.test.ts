import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/drawing/display-list.ts';
import { type ProfiledPack, zoneProfile } from '../../../src/drawing/zone-profile.ts';

const words = { alt: 'alt', nothing: 'Nothing', axis: 'Zone', below: '', tick: (value: number) => value.toFixed(0) };
const draw = (packs: ProfiledPack[], zones = ['Enclosure', 'Wiring']): Drawing =>
  zoneProfile({ width: 316, zones, packs, words });
const circles = ({ marks }: Drawing) =>
  marks.flatMap((mark) => (mark.kind === 'shape' && mark.shape.form === 'ellipse' ? [mark.shape] : []));
const at = (value: number) => ({ low: value, high: value });
const joined = ({ marks }: Drawing) => marks.filter((mark) => mark.kind === 'line' && mark.stroke.ink === 'muted');

describe('zoneProfile', () => {
  it('stands 0 at 8 units from the left, 1 at 8 from the right, and 0.25 at 83 of 316', () => {
    const [none, all] = circles(draw([{ label: 'Wren', sign: 0, zones: [at(0), at(1)] }]));
    expect([none?.cx, all?.cx]).toEqual([8, 308]);
    expect(circles(draw([{ label: 'Wren', sign: 0, zones: [at(0.25), null] }]))[0]?.cx).toBe(83);
  });

  it('spans an open zone from 0.2 to 0.6 by a level bar from 68 to 188', () => {
    const { marks } = draw([{ label: 'Wren', sign: 0, zones: [{ low: 0.2, high: 0.6 }, null] }]);
    const bars = marks.flatMap((mark) =>
      mark.kind === 'line' && mark.stroke.width === 1.9 && mark.points[0]?.[0] === 68 ? [mark.points] : [],
    );
    expect(bars.map((points) => points.map(([x]) => Math.round(x)))).toEqual([[68, 188]]);
  });

  it('draws no sign where nothing of a zone can apply', () => {
    // One sign in the plot and one in the key.
    expect(circles(draw([{ label: 'Wren', sign: 0, zones: [null, at(1)] }]))).toHaveLength(2);
  });

  it('joins no signs past a zone that is not drawn: 2 of 5 zones on either side make 2 lines, one alone none', () => {
    const zones = ['A', 'B', 'C', 'D', 'E'];
    const lines = (...values: ProfiledPack['zones']) =>
      joined(draw([{ label: 'Wren', sign: 0, zones: values }], zones));
    expect(lines(at(0.1), at(0.2), null, at(0.3), at(0.4))).toHaveLength(2);
    expect(lines(at(0.1), null, null, null, at(0.4))).toHaveLength(0);
  });

  it('says beneath the key what is not drawn, 16 units higher for its one row', () => {
    const packs = [{ label: 'Wren', sign: 0, zones: [at(0.5), null] }];
    const plain = draw(packs);
    const noted = zoneProfile({ width: 316, zones: ['A', 'B'], packs, words: { ...words, below: 'Wren in B.' } });
    expect(noted.height - plain.height).toBe(16);
    const texts = noted.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    expect(texts.at(-1)?.text).toBe('Wren in B.');
    expect(texts.at(-1)?.y).toBeGreaterThan(Math.max(...texts.slice(0, -1).map(({ y }) => y)));
  });

  it('joins the signs of 4 packs from zone to zone, and of 5 none', () => {
    const packs = (count: number) =>
      Array.from({ length: count }, (_, sign) => ({ label: `P${sign}`, sign, zones: [at(0.5), at(0.7)] }));
    expect(joined(draw(packs(4)))).toHaveLength(4);
    expect(joined(draw(packs(5)))).toHaveLength(0);
  });

  it('gives each pack a lane of its own: eight packs of one figure do not cover one another', () => {
    const drawing = draw(
      Array.from({ length: 8 }, (_, place) => ({ label: `P${place}`, sign: 0, zones: [at(0.5)] })),
      ['Enclosure'],
    );
    const ys = circles(drawing)
      .slice(0, 8)
      .map(({ cy }) => cy);
    expect(ys.slice(1).map((y, place) => y - (ys[place] ?? 0))).toEqual([10, 10, 10, 10, 10, 10, 10]);
  });

  it('refuses a pack that has not one place a zone', () => {
    expect(() => draw([{ label: 'Wren', sign: 0, zones: [at(1)] }])).toThrow(
      'zoneProfile: each pack must have 2 zones, got 1 of Wren',
    );
  });
});
