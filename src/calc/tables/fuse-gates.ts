/** One operating-time gate of a fuse: at this multiple of its rating it carries at least, and opens within, these times. */
export interface FuseGate {
  currentFactor: number;
  minTimeS?: number;
  maxTimeS?: number;
  /** Ratings it holds for; all of the family when left out. */
  ratingsA?: { from: number; to: number };
}

export interface FuseFamily {
  id: string;
  /** Standard and kind, as the trade calls it. */
  name: string;
  source: string;
  /** `read`: stood in a page. `partly`: some gates stood there. `memory`: from memory, not seen. `notFound`: no gates known. */
  status: 'read' | 'partly' | 'memory' | 'notFound';
  /** Ratings of the family; left out where the source gives none. */
  ratingsA?: { from: number; to: number };
  gates: readonly FuseGate[];
}

const MINUTE = 60;
const HOUR = 3600;

/**
 * Operating-time gates of fuses by kind. The maker's sheet of the fuse in hand comes first: two pages on one standard differ.
 *
 * Source  beside each family with how it was read; no standard itself was opened
 * Check   tests/calc/tables/fuse-gates.test.ts
 */
export const FUSE_FAMILIES: readonly FuseFamily[] = [
  {
    id: 'ul248-14',
    name: 'UL 248-14 miniature',
    source: 'a fuse maker’s selection guide, page 12: carries 100 %',
    status: 'read',
    ratingsA: { from: 0, to: 60 },
    gates: [
      { currentFactor: 1.35, maxTimeS: 60 * MINUTE },
      { currentFactor: 2, maxTimeS: 2 * MINUTE, ratingsA: { from: 0, to: 30 } },
      { currentFactor: 2, maxTimeS: 4 * MINUTE, ratingsA: { from: 35, to: 60 } },
    ],
  },
  {
    id: 'ul248-14-cartridge',
    name: 'UL 248-14 listed cartridge',
    source: 'a public article on miniature fuses and a mailing list: carries 110 % for 4 h',
    status: 'read',
    ratingsA: { from: 0, to: 30 },
    gates: [
      { currentFactor: 1.1, minTimeS: 4 * HOUR },
      { currentFactor: 1.35, maxTimeS: 60 * MINUTE },
      { currentFactor: 2, maxTimeS: 2 * MINUTE },
    ],
  },
  {
    id: 'iec60127-2-f',
    name: 'IEC 60127-2 quick-acting (F)',
    source:
      'a public article on miniature fuses; its 400 % row gives two ranges without their ratings, the wider is taken',
    status: 'read',
    ratingsA: { from: 0.032, to: 10 },
    gates: [
      { currentFactor: 1.5, minTimeS: 60 * MINUTE },
      { currentFactor: 2.1, maxTimeS: 30 * MINUTE },
      { currentFactor: 2.75, minTimeS: 0.01, maxTimeS: 0.5, ratingsA: { from: 0.032, to: 0.1 } },
      { currentFactor: 2.75, minTimeS: 0.05, maxTimeS: 2, ratingsA: { from: 0.125, to: 10 } },
      { currentFactor: 4, minTimeS: 0.003, maxTimeS: 0.3 },
      { currentFactor: 10, maxTimeS: 0.02 },
    ],
  },
  {
    id: 'ul248-9-k',
    name: 'UL 248-9 class K',
    source: 'an excerpt of UL 248-9:2015; its times at 135 % and 200 % are in a table that was not seen',
    status: 'partly',
    ratingsA: { from: 0, to: 600 },
    gates: [
      { currentFactor: 1.1, minTimeS: 15 * MINUTE, ratingsA: { from: 0, to: 200 } },
      { currentFactor: 1.1, minTimeS: 30 * MINUTE, ratingsA: { from: 201, to: 600 } },
    ],
  },
  {
    id: 'ul248-2-c',
    name: 'UL 248-2 class C',
    source: 'an excerpt of UL 248-2:2019',
    status: 'partly',
    ratingsA: { from: 61, to: 1200 },
    gates: [
      { currentFactor: 1.6, maxTimeS: 120 * MINUTE, ratingsA: { from: 61, to: 200 } },
      { currentFactor: 1.6, maxTimeS: 240 * MINUTE, ratingsA: { from: 201, to: 1200 } },
    ],
  },
  {
    id: 'bolt-in-32v',
    name: '32 V blade and bolt-in',
    source: 'one fuse maker’s data sheet',
    status: 'read',
    gates: [
      { currentFactor: 1, minTimeS: 4 * HOUR },
      { currentFactor: 2, maxTimeS: 120 },
    ],
  },
  {
    id: 'iso8820-3',
    name: 'ISO 8820-3 blade',
    source: 'from memory, not seen',
    status: 'memory',
    ratingsA: { from: 0, to: 100 },
    gates: [
      { currentFactor: 1.1, minTimeS: 100 * HOUR },
      { currentFactor: 1.35, minTimeS: 0.75, maxTimeS: 600 },
      { currentFactor: 1.6, minTimeS: 0.25, maxTimeS: 50 },
      { currentFactor: 2, minTimeS: 0.15, maxTimeS: 5 },
      { currentFactor: 3.5, minTimeS: 0.04, maxTimeS: 0.5 },
      { currentFactor: 6, maxTimeS: 0.1 },
    ],
  },
  {
    id: 'iso8820-5-sf51',
    name: 'ISO 8820-5 bolt-in SF51 (“MEGA”)',
    source: 'gates from memory, not seen; ratings 30–500 A from the scope of ISO 8820-5:2015',
    status: 'memory',
    ratingsA: { from: 30, to: 500 },
    gates: [
      { currentFactor: 0.75, minTimeS: 100 * HOUR },
      { currentFactor: 1.35, minTimeS: 120, maxTimeS: 1800 },
      { currentFactor: 2, minTimeS: 1, maxTimeS: 15 },
      { currentFactor: 3.5, minTimeS: 0.3, maxTimeS: 5 },
      { currentFactor: 6, minTimeS: 0.1, maxTimeS: 1 },
    ],
  },
  {
    id: 'iso8820-5-sf30',
    name: 'ISO 8820-5 bolt-in SF30 (“MIDI”) and ANL',
    source: 'no gates found',
    status: 'notFound',
    gates: [],
  },
  {
    id: 'ul248-15-t',
    name: 'UL 248-15 class T',
    source: 'no gates found; fast acting, 1–1200 A',
    status: 'notFound',
    ratingsA: { from: 1, to: 1200 },
    gates: [],
  },
];

/** Gates of a family for one rating; empty when the family has none known or is not made in that rating. */
export function fuseGatesFor(family: FuseFamily, ratingA: number): FuseGate[] {
  if (!covers(family.ratingsA, ratingA)) return [];
  return family.gates.filter((gate) => covers(gate.ratingsA, ratingA));
}

function covers(ratingsA: { from: number; to: number } | undefined, ratingA: number): boolean {
  return ratingsA === undefined || (ratingA >= ratingsA.from && ratingA <= ratingsA.to);
}
