import type { Drawing, Mark } from './display-list.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis } from './plots/axis-marks.ts';
import { curveLook } from './plots/curve-looks.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { keyRows } from './plots/key-rows.ts';
import { type Box, labelRoom } from './plots/label-room.ts';
import { linearScale, type Scale } from './plots/linear-scale.ts';
import { noteRows } from './plots/note-rows.ts';
import { packSign } from './plots/pack-sign.ts';
import { GRID_STROKE, NAME } from './plots/plot-look.ts';
import { requireFinite } from './plots/require-finite.ts';
import { shortened } from './text-shortened.ts';
import type { Point } from './turn-point.ts';

export interface ProfiledPack {
  label: string;
  /** Which sign and dash: the same as in the other plots. */
  sign: number;
  /** By zone, 0–1 at both ends; null where there is nothing to draw: no sign, and no line to it or past it. */
  zones: readonly ({ low: number; high: number } | null)[];
}

export interface ZoneProfileInput {
  width: number;
  zones: readonly string[];
  packs: readonly ProfiledPack[];
  words: {
    alt: string;
    nothing: string;
    /** Title of the axis. */
    axis: string;
    /** A sentence beneath: what is not drawn, and why; empty for none. */
    below: string;
    tick: (value: number, decimals: number) => string;
  };
}

const TICKS = [0, 25, 50, 75, 100];
/** A zone's name above its lanes, one lane a pack. */
const NAME_HEIGHT = 20;
const LANE = 10;
const ZONE_GAP = 5;
/** Room for half a sign at 0 and at 100. */
const SIDE = 8;
/** Lines from zone to zone for so many packs; more would be a tangle. Our choice. */
const MOST_JOINED = 4;
const CAP = 3;

/** The credit each zone keeps, one lane a pack; level bars span what is open, and a dashed line joins a pack's signs. */
export function zoneProfile({ width, zones, packs, words }: ZoneProfileInput): Drawing {
  requireFinite('zoneProfile: width', [width]);
  const ranges = packs.flatMap((pack) => pack.zones.flatMap((range) => range ?? []));
  requireFinite(
    'zoneProfile: zones',
    ranges.flatMap(({ low, high }) => [low, high]),
  );
  const stranger = packs.find((pack) => pack.zones.length !== zones.length);
  if (stranger !== undefined) {
    throw new RangeError(
      `zoneProfile: each pack must have ${zones.length} zones, got ${stranger.zones.length} of ${stranger.label}`,
    );
  }
  if (ranges.length === 0) return emptyFrame({ width, height: 80, alt: words.alt, nothing: words.nothing });
  const key = keyRows(
    packs.map(({ label, sign }) => ({ text: label, sign: (x, y) => keySign(sign, [x, y]) })),
    width,
  );
  const note = noteRows(words.below, width);
  const below = key.height + note.height;
  const zoneHeight = NAME_HEIGHT + packs.length * LANE + ZONE_GAP;
  const panel: Box = { left: SIDE, right: width - SIDE, top: 0, bottom: zones.length * zoneHeight + 2 };
  const height = panel.bottom + BOTTOM_AXIS_HEIGHT + below + 4;
  const x = linearScale({ low: 0, high: 1 }, panel.left, panel.right);
  const y = (zone: number, pack: number) => zone * zoneHeight + NAME_HEIGHT + (pack + 0.5) * LANE;
  return {
    width,
    height,
    alt: words.alt,
    marks: [
      ...zones.flatMap((title, place) => zoneMarks({ title, top: place * zoneHeight, height: zoneHeight }, x, width)),
      ...bottomAxis({
        panel,
        ticks: TICKS.map((value) => ({ place: x(value / 100), text: words.tick(value, 0) })),
        title: words.axis,
        room: labelRoom({ left: 0, top: panel.bottom, right: width, bottom: height - below }),
        width,
      }),
      ...(packs.length > MOST_JOINED
        ? []
        : packs.flatMap((pack, place) => joinedMarks(pack, x, (zone) => y(zone, place)))),
      ...packs.flatMap((pack, place) => signMarks(pack, x, (zone) => y(zone, place))),
      ...key.marksAt(height - below),
      ...note.marksAt(height - note.height),
    ],
  };
}

/** Name, a line over all zones but the first, and faint uprights below the name only. */
function zoneMarks(zone: { title: string; top: number; height: number }, x: Scale, width: number): Mark[] {
  const { title, top, height } = zone;
  const uprights = TICKS.map((value): Mark => {
    const at = x(value / 100);
    return {
      kind: 'line',
      points: [
        [at, top + NAME_HEIGHT - 2],
        [at, top + height],
      ],
      stroke: GRID_STROKE,
    };
  });
  const words: Mark = {
    kind: 'text',
    x: SIDE,
    y: top + 14,
    text: shortened(title, NAME, width - 2 * SIDE),
    ...NAME,
    anchor: 'start',
    ink: 'ink',
  };
  return [...uprights, words];
}

const middleOf = ({ low, high }: { low: number; high: number }) => (low + high) / 2;

function joinedMarks({ sign, zones }: ProfiledPack, x: Scale, y: (zone: number) => number): Mark[] {
  const pieces: Point[][] = [[]];
  zones.forEach((range, zone) => {
    if (range === null) pieces.push([]);
    else pieces.at(-1)?.push([x(middleOf(range)), y(zone)]);
  });
  const stroke = { ...curveLook(sign), ink: 'muted', width: 0.9 } as const;
  return pieces.filter((points) => points.length > 1).map((points) => ({ kind: 'line', points, stroke }));
}

function signMarks({ sign, zones }: ProfiledPack, x: Scale, y: (zone: number) => number): Mark[] {
  return zones.flatMap((range, zone): Mark[] => {
    if (range === null) return [];
    return [
      ...rangeBar(sign, [x(range.low), x(range.high)], y(zone)),
      ...packSign(sign, [x(middleOf(range)), y(zone)]),
    ];
  });
}

function rangeBar(sign: number, [low, high]: [number, number], y: number): Mark[] {
  if (high - low < 1) return [];
  const ends = [low, high].map(
    (x): Mark => ({
      kind: 'line',
      points: [
        [x, y - CAP],
        [x, y + CAP],
      ],
      stroke: { ink: 'ink', width: 1.2 },
    }),
  );
  const points: Point[] = [
    [low, y],
    [high, y],
  ];
  return [{ kind: 'line', points, stroke: curveLook(sign) }, ...ends];
}

/** The sign on a piece of the pack's line. */
function keySign(sign: number, [x, y]: Point): Mark[] {
  const points: Point[] = [
    [x - 7, y],
    [x + 8, y],
  ];
  return [{ kind: 'line', points, stroke: curveLook(sign) }, ...packSign(sign, [x, y])];
}
