import { lidGlyph } from '../drawing/lid-glyph.ts';
import type { Grade } from '../schema/grade.ts';
import { DrawingView } from './drawing-view.tsx';

/** The lid that stands for an outcome. The words beside it say the same, so it is silent to a screen reader. */
export function Lid({ outcome, widthPx = 26 }: { outcome: Grade | 'notSeen' | 'doesNotApply'; widthPx?: number }) {
  return <DrawingView drawing={{ ...lidGlyph(outcome), alt: '' }} widthPx={widthPx} />;
}
