import { rulerMarks } from '../../drawing/ruler-marks.ts';
import type { ImagePoint } from '../../schema/callout.ts';
import { rulerStageWords as say } from '../../text/live-tests/ruler.ts';
import { editingFrame } from '../callouts/grip.ts';
import { Loupe } from '../callouts/loupe.tsx';
import { type StageSize, shownSize, toStage, type View } from '../callouts/view.ts';
import { DrawingView } from '../drawing-view.tsx';
import type { HeldPoint } from './ruler-points.ts';

interface RulerPlaneProps {
  photoUrl: string;
  laid: { view: View; size: StageSize };
  points: readonly ImagePoint[];
  held: HeldPoint | null;
  crosshair: ImagePoint | null;
}

/** The photo as it lies, the card and the distance on it, a handle at each point, the loupe and the crosshair. */
export function RulerPlane({ photoUrl, laid, points, held, crosshair }: RulerPlaneProps) {
  const { view, size } = laid;
  const shown = shownSize(size, view.zoom);
  const ruler = { corners: points.slice(0, 4), ends: points.slice(4), cardText: say.longSide, text: '' };
  const placed = (point: ImagePoint) => {
    const [leftPx, topPx] = toStage(point, view, size);
    return { left: `${leftPx}px`, top: `${topPx}px` };
  };
  return (
    <>
      <div
        class="callout-plane"
        style={{
          width: `${shown.widthPx}px`,
          height: `${shown.heightPx}px`,
          transform: `translate(${view.leftPx}px, ${view.topPx}px)`,
        }}
      >
        <img src={photoUrl} alt="" draggable={false} />
        <DrawingView drawing={rulerMarks({ rulers: [ruler], ...editingFrame(shown, shownSize(size)) })} />
      </div>
      {points.map((point, place) => (
        <span key={place} class={place === held?.place ? 'ruler-handle held' : 'ruler-handle'} style={placed(point)} />
      ))}
      {crosshair && <span class="callout-crosshair" style={placed(crosshair)} />}
      {held && (
        <Loupe
          photoUrl={photoUrl}
          at={toStage(held.at, view, size)}
          stageWidthPx={size.stageWidthPx}
          photo={{ leftPx: view.leftPx, topPx: view.topPx, ...shown }}
        />
      )}
    </>
  );
}
