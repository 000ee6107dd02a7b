import type { SealedFigure, SealedFigures } from '../../../schema/sealed-sheet.ts';

/** Relative and, near nothing, absolute. Source: DESIGN §9, issue 4 (1e-9); engines differ in the last digits of a power. */
const SAME_FRAC = 1e-9;
const SAME_NEAR_ZERO = 1e-12;

export interface FigureComparison {
  /** Lines that came out again. */
  same: number;
  differing: { path: string; sealed: SealedFigure; recomputed: SealedFigure }[];
  /** Lines that were worked out now and that the file does not have. */
  missing: { path: string; recomputed: SealedFigure }[];
  /** Lines of the file that do not come out of its entries. */
  extra: { path: string; sealed: SealedFigure }[];
}

/** Every line of both sides, in order of path. */
export function compareFigures(sealed: SealedFigures, recomputed: SealedFigures): FigureComparison {
  const found: FigureComparison = { same: 0, differing: [], missing: [], extra: [] };
  const paths = [...new Set([...Object.keys(sealed), ...Object.keys(recomputed)])].sort();
  for (const path of paths) {
    const one = Object.hasOwn(sealed, path) ? sealed[path] : undefined;
    const other = Object.hasOwn(recomputed, path) ? recomputed[path] : undefined;
    if (one === undefined && other !== undefined) found.missing.push({ path, recomputed: other });
    else if (other === undefined && one !== undefined) found.extra.push({ path, sealed: one });
    else if (one !== undefined && other !== undefined) {
      if (isSame(one, other)) found.same += 1;
      else found.differing.push({ path, sealed: one, recomputed: other });
    }
  }
  return found;
}

/** Numbers to 1e-9 of the larger, everything else exactly. */
export function isSame(one: SealedFigure, other: SealedFigure): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  const larger = Math.max(Math.abs(one), Math.abs(other));
  return Math.abs(one - other) <= Math.max(SAME_FRAC * larger, SAME_NEAR_ZERO);
}
