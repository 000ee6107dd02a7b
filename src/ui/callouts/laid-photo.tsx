import type { ComponentChildren } from 'preact';
import type { ImagePoint } from '../../schema/callout.ts';
import { Loupe } from './loupe.tsx';
import { type StagePoint, type StageSize, shownSize, toStage, type View } from './view.ts';

export interface Laid {
  view: View;
  size: StageSize;
}

interface LaidPhotoProps {
  photoUrl: string;
  laid: Laid;
  /** Drawn on the photo and magnified with it. */
  drawn: ComponentChildren;
  /** Where the loupe looks, while a finger is down. */
  loupeAt: ImagePoint | null;
  /** On the stage, above the photo, in its own size: handles, crosshair. */
  children: ComponentChildren;
}

/** The photo as it lies on the stage, what is drawn on it, what stands above it, and the loupe. */
export function LaidPhoto({ photoUrl, laid, drawn, loupeAt, children }: LaidPhotoProps) {
  const { view, size } = laid;
  const shown = shownSize(size, view.zoom);
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
        {drawn}
      </div>
      {children}
      {loupeAt && (
        <Loupe
          photoUrl={photoUrl}
          at={toStage(loupeAt, view, size)}
          stageWidthPx={size.stageWidthPx}
          photo={{ leftPx: view.leftPx, topPx: view.topPx, ...shown }}
        />
      )}
    </>
  );
}

/** Where a point of the photo stands on the stage, as a style. */
export function placedAt(point: ImagePoint, { view, size }: Laid): { left: string; top: string } {
  const [leftPx, topPx]: StagePoint = toStage(point, view, size);
  return { left: `${leftPx}px`, top: `${topPx}px` };
}
