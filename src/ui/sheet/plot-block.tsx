import type { PlotBlock } from '../../sheet/model/sheet.ts';
import { DrawingView } from '../drawing-view.tsx';

/** A plot as wide as its column, with what it shows in words below. */
export function PlotPart({ block }: { block: PlotBlock }) {
  return (
    <figure class="sheet-plot">
      <DrawingView drawing={block.drawing} />
      <figcaption class="small muted">{block.caption}</figcaption>
    </figure>
  );
}
