import { useId, useState } from 'preact/hooks';
import type { ImagePoint } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { keyStep } from './crosshair.ts';
import { movedPoint, movedWhole } from './shape-callout.ts';
import { calloutName, type ShownCallout } from './shown-callout.ts';
import type { StagePoint } from './view.ts';

interface CalloutMarksProps {
  callouts: readonly ShownCallout[];
  zoom: number;
  toStage: (point: ImagePoint) => StagePoint;
  onChoose: (id: string) => void;
  onMove: (id: string, points: ImagePoint[]) => void;
  onRemove: (id: string) => void;
}

/** A place to stop at for the Tab key on every callout, unseen until it is reached. Fingers go through to the stage. */
export function CalloutMarks({ callouts, ...rest }: CalloutMarksProps) {
  const keysId = useId();
  return (
    <>
      <p class="unseen" id={keysId}>
        {calloutWords.markKeys}
      </p>
      {callouts.map((callout) => (
        <CalloutMark key={callout.id} callout={callout} keysId={keysId} {...rest} />
      ))}
    </>
  );
}

type CalloutMarkProps = Omit<CalloutMarksProps, 'callouts'> & { callout: ShownCallout; keysId: string };

function CalloutMark({ callout, keysId, zoom, toStage, onChoose, onMove, onRemove }: CalloutMarkProps) {
  const [inHand, setInHand] = useState(0);
  const { id, points, kind } = callout;
  const single = kind !== 'stroke';
  const point = points[inHand] ?? points[0];
  if (point === undefined) return null;
  const [leftPx, topPx] = toStage(point);

  function onKeyDown(event: KeyboardEvent) {
    const by = keyStep(event.key, { large: event.shiftKey, zoom });
    if (by !== null && point !== undefined) {
      const moved = single ? movedPoint(points, inHand, [point[0] + by[0], point[1] + by[1]]) : movedWhole(points, by);
      onMove(id, moved);
    } else if (event.key === 'Enter' && single) setInHand((inHand + 1) % points.length);
    else if (event.key === 'Delete' || event.key === 'Backspace') onRemove(id);
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  const hand = single && points.length > 1 ? `, ${calloutWords.pointInHand(inHand + 1, points.length)}` : '';
  return (
    <button
      type="button"
      class="callout-mark"
      aria-label={calloutName(callout) + hand}
      aria-describedby={keysId}
      style={{ left: `${leftPx}px`, top: `${topPx}px` }}
      onFocus={() => onChoose(id)}
      onKeyDown={onKeyDown}
    />
  );
}
