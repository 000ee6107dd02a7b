import type { StagePoint } from './view.ts';

interface LoupeProps {
  photoUrl: string;
  /** Where the finger is on the stage, and how wide the stage is. */
  at: StagePoint;
  stageWidthPx: number;
  /** The photo as it lies there. */
  photo: { leftPx: number; topPx: number; widthPx: number; heightPx: number };
}

/** A thumb in a glove covers about 50 px: our choice, the loupe stands clear of it and shows twice its size. */
const DIAMETER_PX = 124;
const AWAY_PX = 112;
const MAGNIFIED = 2.5;

/** What lies under the finger, magnified, above it; beside it where there is no room above. */
export function Loupe({ photoUrl, at, stageWidthPx, photo }: LoupeProps) {
  const half = DIAMETER_PX / 2;
  const above = at[1] - AWAY_PX - half >= 0;
  const beside = at[0] < stageWidthPx / 2 ? at[0] + AWAY_PX : at[0] - AWAY_PX;
  const middle: StagePoint = [
    Math.min(Math.max(above ? at[0] : beside, half), stageWidthPx - half),
    above ? at[1] - AWAY_PX : Math.max(at[1], half),
  ];
  return (
    <div
      class="callout-loupe"
      aria-hidden="true"
      style={{
        width: `${DIAMETER_PX}px`,
        height: `${DIAMETER_PX}px`,
        left: `${middle[0] - half}px`,
        top: `${middle[1] - half}px`,
      }}
    >
      <img
        src={photoUrl}
        alt=""
        draggable={false}
        style={{
          width: `${photo.widthPx * MAGNIFIED}px`,
          height: `${photo.heightPx * MAGNIFIED}px`,
          left: `${half - (at[0] - photo.leftPx) * MAGNIFIED}px`,
          top: `${half - (at[1] - photo.topPx) * MAGNIFIED}px`,
        }}
      />
    </div>
  );
}
