import type { ComponentChildren } from 'preact';
import { icon } from '../../drawing/icons.ts';
import type { ImagePoint } from '../../schema/callout.ts';
import { rulerStageWords as say } from '../../text/live-tests/ruler.ts';
import { DrawingView } from '../drawing-view.tsx';
import { RULER_POINTS } from './ruler-points.ts';
import { RulerStage } from './ruler-stage.tsx';
import '../callouts/callouts.css';
import './ruler.css';

interface RulerEditorProps {
  photoUrl: string;
  widthPx: number;
  heightPx: number;
  /** As far as they are set: corners of the card, then the ends of the distance. */
  points: readonly ImagePoint[];
  /** The distance in words, or why there is none; empty while points are missing. */
  result: string;
  onPoints: (points: ImagePoint[]) => void;
  /** The neighbouring side of the card is its long one. */
  onTurn: () => void;
  onDone: () => void;
  /** The row above the photo: "If it smokes", "saved". */
  children?: ComponentChildren;
}

/** A photo over the whole screen, on which the corners of a card and the ends of a distance are set. */
export function RulerEditor({ photoUrl, widthPx, heightPx, points, result, ...on }: RulerEditorProps) {
  const step = say.steps[Math.min(points.length, say.steps.length - 1)] ?? '';
  const isWhole = points.length >= RULER_POINTS;
  return (
    <section class="callout-editor" aria-label={say.editor}>
      {on.children && <div class="callout-head">{on.children}</div>}
      <RulerStage
        photoUrl={photoUrl}
        photo={{ widthPx, heightPx }}
        points={points}
        step={step}
        onPoints={on.onPoints}
      />
      <div class="callout-desk">
        <div class="ruler-say">
          <p class="small muted">{say.stepOf(Math.min(points.length + 1, RULER_POINTS), isWhole)}</p>
          <p role="status">{isWhole ? result : step}</p>
        </div>
        <p class="callout-hint small muted">{isWhole ? say.shift : say.near}</p>
        <button type="button" class="button" disabled={points.length < 4} onClick={on.onTurn}>
          {say.turn}
        </button>
        <div class="callout-dock">
          <button
            type="button"
            class="button"
            disabled={points.length === 0}
            onClick={() => on.onPoints(points.slice(0, -1))}
          >
            <DrawingView drawing={icon('undo')} />
            {say.back}
          </button>
          <button type="button" class="button primary" onClick={on.onDone}>
            {isWhole ? say.done : say.later}
          </button>
        </div>
      </div>
    </section>
  );
}
