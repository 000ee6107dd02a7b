import { rulerMarks } from '../../drawing/ruler-marks.ts';
import type { ImagePoint } from '../../schema/callout.ts';
import { rulerStageWords as say } from '../../text/live-tests/ruler.ts';
import { editingFrame } from '../callouts/grip.ts';
import { type Laid, LaidPhoto, placedAt } from '../callouts/laid-photo.tsx';
import { shownSize } from '../callouts/view.ts';
import { DrawingView } from '../drawing-view.tsx';
import type { HeldPoint } from './ruler-points.ts';

interface RulerPlaneProps {
  photoUrl: string;
  laid: Laid;
  points: readonly ImagePoint[];
  held: HeldPoint | null;
  crosshair: ImagePoint | null;
}

/** The photo as it lies, the card and the distance on it, a handle at each point, the loupe and the crosshair. */
export function RulerPlane({ photoUrl, laid, points, held, crosshair }: RulerPlaneProps) {
  const { view, size } = laid;
  const shown = shownSize(size, view.zoom);
  const ruler = { corners: points.slice(0, 4), ends: points.slice(4), cardText: say.longSide, text: '' };
  return (
    <LaidPhoto
      {...{ photoUrl, laid }}
      drawn={<DrawingView drawing={rulerMarks({ rulers: [ruler], ...editingFrame(shown, shownSize(size)) })} />}
      loupeAt={held?.at ?? null}
    >
      {points.map((point, place) => (
        <span
          key={place}
          class={place === held?.place ? 'ruler-handle held' : 'ruler-handle'}
          style={placedAt(point, laid)}
        />
      ))}
      {crosshair && <span class="callout-crosshair" style={placedAt(crosshair, laid)} />}
    </LaidPhoto>
  );
}
