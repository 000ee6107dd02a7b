import type { Ink, Palette } from './display-list.ts';

/** Okabe & Ito, Color Universal Design (2008): bluish green, sky blue, orange, vermillion. Only inside the lid glyph. */
const GRADE_INKS = { sound: '#009E73', passable: '#56B4E9', weak: '#E69F00', failed: '#D55E00' } as const;
const ABSOLUTE_INKS = { white: '#FFFFFF', black: '#000000' } as const;

/** Dark: a workbench at night. */
export const BENCH: Palette = {
  ground: '#16191C',
  face: '#1F2428',
  line: '#3B434A',
  ink: '#F3EFE4',
  muted: '#B8B3A4',
  tape: '#E7DDBB',
  tapeInk: '#22211C',
  ...GRADE_INKS,
  ...ABSOLUTE_INKS,
};

/** Light: a page of a lab notebook; also what is printed. */
export const PAPER: Palette = {
  ground: '#F6F2E7',
  face: '#FFFDF6',
  line: '#CFC7B2',
  ink: '#1B1E20',
  muted: '#595648',
  tape: '#E4D7A9',
  tapeInk: '#22211C',
  ...GRADE_INKS,
  ...ABSOLUTE_INKS,
};

/** The inks as CSS variables, so that a change of theme redraws nothing. White and black are the same in every theme. */
export const CSS_INKS: Palette = {
  ground: 'var(--ground)',
  face: 'var(--face)',
  line: 'var(--line)',
  ink: 'var(--ink)',
  muted: 'var(--muted)',
  tape: 'var(--tape)',
  tapeInk: 'var(--tape-ink)',
  sound: 'var(--sound)',
  passable: 'var(--passable)',
  weak: 'var(--weak)',
  failed: 'var(--failed)',
  ...ABSOLUTE_INKS,
};

export const INKS = Object.keys(BENCH) as Ink[];

/** Family of every text mark; the same files serve screen, PDF and canvas. */
export const FONT_FAMILY = 'Underlid Sans';
