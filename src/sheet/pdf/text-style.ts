import type { Ink } from '../../drawing/display-list.ts';

export interface TextStyle {
  size: number;
  weight: 400 | 500 | 600;
  /** From baseline to baseline. */
  leading: number;
  ink: Ink;
}

/** Sizes in points. Our choice: a page of notes, read at arm's length. */
export const STYLES = {
  name: { size: 24, weight: 600, leading: 29, ink: 'ink' },
  verdict: { size: 18, weight: 600, leading: 23, ink: 'ink' },
  section: { size: 13, weight: 600, leading: 17, ink: 'ink' },
  subhead: { size: 9.5, weight: 600, leading: 13, ink: 'ink' },
  title: { size: 10.5, weight: 600, leading: 14, ink: 'ink' },
  body: { size: 9.5, weight: 400, leading: 13.2, ink: 'ink' },
  strong: { size: 9.5, weight: 500, leading: 13.2, ink: 'ink' },
  total: { size: 9.5, weight: 600, leading: 13.2, ink: 'ink' },
  small: { size: 8.3, weight: 400, leading: 11.2, ink: 'muted' },
  figure: { size: 14.5, weight: 600, leading: 18, ink: 'ink' },
  number: { size: 13, weight: 600, leading: 14, ink: 'ink' },
  overline: { size: 9.5, weight: 400, leading: 13, ink: 'muted' },
  foot: { size: 7.6, weight: 400, leading: 10, ink: 'muted' },
} as const satisfies Record<string, TextStyle>;
