import { type CutawayZone, cutaway } from '../drawing/cutaway.ts';
import { drawingWords } from '../text/drawings.ts';
import { DrawingView } from './drawing-view.tsx';

interface CutawayMapProps {
  cellsInSeries: number | null;
  zones: CutawayZone[];
  onChoose: (zoneId: string) => void;
}

/** Drawn for a phone 390 px wide less its margins; it stretches with the screen. */
const WIDTH_PX = 362;

/** The cutaway with a real button over each zone. */
export function CutawayMap({ cellsInSeries, zones, onChoose }: CutawayMapProps) {
  const { drawing, touchAreas } = cutaway({ cellsInSeries, zones, widthPx: WIDTH_PX, alt: drawingWords.cutaway });
  return (
    <div class="cutaway">
      <DrawingView drawing={drawing} />
      {touchAreas.map(({ zoneId, x, y, width, height }) => {
        const zone = zones.find((candidate) => candidate.zoneId === zoneId);
        return (
          <button
            key={zoneId}
            type="button"
            aria-label={`${zone?.title ?? zoneId}, ${zone?.progressText ?? ''}`}
            data-zone={zoneId}
            style={{
              left: `${(x / drawing.width) * 100}%`,
              top: `${(y / drawing.height) * 100}%`,
              width: `${(width / drawing.width) * 100}%`,
              height: `${(height / drawing.height) * 100}%`,
            }}
            onClick={() => onChoose(zoneId)}
          />
        );
      })}
    </div>
  );
}
