import type { Drawing, Mark } from './display-list.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis } from './plots/axis-marks.ts';
import { barColumns, barRowWords } from './plots/bar-columns.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { type Box, clampedAcross, labelRoom } from './plots/label-room.ts';
import { linearScale } from './plots/linear-scale.ts';
import { framedTicks } from './plots/nice-ticks.ts';
import { FIGURE } from './plots/plot-look.ts';
import { requireFinite } from './plots/require-finite.ts';
import { shortened } from './text-shortened.ts';

export interface SharingBar {
  label: string;
  /** Of the charge of all, 0–1; null if it was not read. */
  shareFrac: number | null;
  /** Its figure, or why there is none. */
  text: string;
}

export interface SharingBarsInput {
  width: number;
  strings: readonly SharingBar[];
  words: {
    alt: string;
    nothing: string;
    /** At the line where each would stand if all gave the same. */
    equal: string;
    tick: (shareFrac: number) => string;
    /** Title of the axis. */
    share: string;
  };
}

const ROW_HEIGHT = 24;
const BAR_HEIGHT = 11;
/** Above the bars: the words of the equal share. */
const TOP = 20;
const MOST_TICKS = 4;

/**
 * How much of the charge each of several strings, or packs, in parallel gave, against the equal share as an upright line.
 * The axis begins at 0; a string that was not read is a dashed empty place.
 */
export function sharingBars({ width, strings, words }: SharingBarsInput): Drawing {
  const shares = strings.flatMap((string) => string.shareFrac ?? []);
  requireFinite('sharingBars: width', [width]);
  requireFinite('sharingBars: shareFrac', shares);
  if (shares.some((share) => share < 0)) throw new RangeError('sharingBars: shareFrac must not be below 0');
  if (strings.length === 0) return emptyFrame({ width, height: 80, alt: words.alt, nothing: words.nothing });
  const equal = 1 / strings.length;
  const rows = strings.map((string) => ({ ...string, strong: false }));
  const columns = barColumns(rows, width);
  const panel: Box = { ...columns, top: TOP, bottom: TOP + strings.length * ROW_HEIGHT + 2 };
  const axis = framedTicks({ low: 0, high: Math.max(...shares, equal) }, MOST_TICKS);
  const x = linearScale(axis, panel.left, panel.right);
  const height = panel.bottom + BOTTOM_AXIS_HEIGHT;
  const bars = rows.flatMap((row, place): Mark[] => {
    const middle = panel.top + (place + 0.5) * ROW_HEIGHT;
    const end = row.shareFrac === null ? panel.right : x(row.shareFrac);
    const shape = {
      form: 'box',
      x: panel.left,
      y: middle - BAR_HEIGHT / 2,
      width: end - panel.left,
      height: BAR_HEIGHT,
    } as const;
    const bar: Mark =
      row.shareFrac === null
        ? { kind: 'shape', shape, stroke: { ink: 'muted', width: 1, dash: [3, 3] } }
        : { kind: 'shape', shape, fill: 'ink' };
    return [bar, ...barRowWords(row, { columns, width, middle })];
  });
  return {
    width,
    height,
    alt: words.alt,
    marks: [
      ...bottomAxis({
        panel,
        width,
        title: words.share,
        room: labelRoom({ left: 0, top: 0, right: width, bottom: height }),
        ticks: axis.values.map((value) => ({ place: x(value), text: words.tick(value) })),
      }),
      ...bars,
      ...equalMarks({ at: x(equal), panel, width, text: words.equal }),
    ],
  };
}

/** Over the bars, with an edge of ground so that it reads on ink. */
function equalMarks({ at, panel, width, text }: { at: number; panel: Box; width: number; text: string }): Mark[] {
  const points: [number, number][] = [
    [at, panel.top - 3],
    [at, panel.bottom],
  ];
  const words: Mark = clampedAcross(
    { kind: 'text', x: at, y: 13, text: shortened(text, FIGURE, width), ...FIGURE, anchor: 'middle', ink: 'ink' },
    0,
    width,
  );
  return [
    { kind: 'line', points, stroke: { ink: 'ground', width: 3.4 } },
    { kind: 'line', points, stroke: { ink: 'ink', width: 1.2, dash: [4, 3] } },
    words,
  ];
}
