import { calloutMarks } from '../../drawing/callouts.ts';
import type { CalloutKind } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import type { Crosshair } from './crosshair.ts';
import type { Draft } from './draft.ts';
import { editingFrame } from './grip.ts';
import { Loupe } from './loupe.tsx';
import type { ShownCallout } from './shown-callout.ts';
import { type StageSize, shownSize, toStage, type View } from './view.ts';

interface StagePlaneProps {
  photoUrl: string;
  laid: { view: View; size: StageSize };
  tool: CalloutKind;
  callouts: readonly ShownCallout[];
  chosen: ShownCallout | null;
  draft: Draft | null;
  crosshair: Crosshair | null;
}

/** The photo as it lies, what is drawn on it, the handles of the chosen callout, the loupe and the crosshair. */
export function StagePlane({ photoUrl, laid, tool, callouts, chosen, draft, crosshair }: StagePlaneProps) {
  const { view, size } = laid;
  const shown = shownSize(size, view.zoom);
  const frame = editingFrame(shown, shownSize(size));
  const now = withDraft({ callouts, chosen, draft, tool });
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
        <DrawingView drawing={calloutMarks({ callouts: now.callouts.map(withPlaceholder), ...frame })} />
      </div>
      {now.chosen && <Handles callout={now.chosen} laid={laid} />}
      {crosshair && <CrosshairMark crosshair={crosshair} laid={laid} />}
      {draft?.loupe && (
        <Loupe
          photoUrl={photoUrl}
          at={toStage(draft.loupe, view, size)}
          stageWidthPx={size.stageWidthPx}
          photo={{ leftPx: view.leftPx, topPx: view.topPx, ...shown }}
        />
      )}
    </>
  );
}

function Handles({ callout, laid }: { callout: ShownCallout; laid: StagePlaneProps['laid'] }) {
  if (callout.kind === 'stroke') return null;
  return (
    <>
      {callout.points.map((point, place) => {
        const [leftPx, topPx] = toStage(point, laid.view, laid.size);
        return <span key={place} class="callout-handle" style={{ left: `${leftPx}px`, top: `${topPx}px` }} />;
      })}
    </>
  );
}

function CrosshairMark({ crosshair, laid }: { crosshair: Crosshair; laid: StagePlaneProps['laid'] }) {
  const [leftPx, topPx] = toStage(crosshair.at, laid.view, laid.size);
  return (
    <>
      {crosshair.set.map((point, place) => {
        const [left, top] = toStage(point, laid.view, laid.size);
        return <span key={place} class="callout-handle" style={{ left: `${left}px`, top: `${top}px` }} />;
      })}
      <span class="callout-crosshair" style={{ left: `${leftPx}px`, top: `${topPx}px` }} />
    </>
  );
}

/** The callouts as they will be once the finger is lifted. */
function withDraft({ callouts, chosen, draft, tool }: Pick<StagePlaneProps, 'callouts' | 'chosen' | 'draft' | 'tool'>) {
  if (draft?.kind === 'move') {
    const moved = { ...draft.callout, points: draft.points };
    return { callouts: callouts.map((callout) => (callout.id === moved.id ? moved : callout)), chosen: moved };
  }
  if (draft?.kind === 'new' && draft.points !== null) {
    const number = tool === 'leader' ? callouts.filter((callout) => callout.kind === 'leader').length + 1 : null;
    return { callouts: [...callouts, { id: '', photoId: '', kind: tool, points: draft.points, number }], chosen: null };
  }
  return { callouts, chosen };
}

/** Words that are still to be written have to show somewhere. */
function withPlaceholder(callout: ShownCallout): ShownCallout {
  const bare = callout.kind === 'text' && (callout.text ?? '') === '';
  return bare ? { ...callout, text: calloutWords.emptyText } : callout;
}
