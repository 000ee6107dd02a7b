import type { Palette } from '../../../drawing/display-list.ts';

/**
 * What the inks stand for in the demo pictures. Flat tones on a bench top; `black` is shade and `line` is light, both
 * laid over what is there, so that a few inks give many tones.
 */
const BENCH_TOP = {
  ink: '#1B2329',
  /** Shade. */
  black: 'rgba(14, 20, 26, 0.26)',
  /** Light. */
  line: 'rgba(255, 255, 255, 0.30)',
  /** Paper, plastic sheet. */
  white: '#F2EEE2',
  /** Bright metal, dark metal. */
  muted: '#B4BCC0',
  tapeInk: '#66747C',
  tape: 'rgba(226, 190, 108, 0.78)',
  /** Board. */
  sound: '#2E6A55',
  /** Copper. */
  weak: '#C0824C',
  /** Red insulation. */
  failed: '#B23E31',
} as const;

/** Powder-coated steel and blue cells. */
export const WREN_TONES: Palette = { ...BENCH_TOP, ground: '#BDB6A6', face: '#55666F', passable: '#2D6198' };

/** Moss-green plastic and teal cells. */
export const DIPPER_TONES: Palette = { ...BENCH_TOP, ground: '#B7BAB0', face: '#4C6353', passable: '#2C7C80' };
