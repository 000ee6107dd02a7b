import { calloutMarks } from '../../drawing/callouts.ts';
import type { CalloutKind } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import type { Crosshair } from './crosshair.ts';
import type { Draft } from './draft.ts';
import { editingFrame } from './grip.ts';
import { type Laid, LaidPhoto, placedAt } from './laid-photo.tsx';
import type { ShownCallout } from './shown-callout.ts';
import { shownSize } from './view.ts';

interface StagePlaneProps {
  photoUrl: string;
  laid: Laid;
  tool: CalloutKind;
  callouts: readonly ShownCallout[];
  chosen: ShownCallout | null;
  draft: Draft | null;
  crosshair: Crosshair | null;
}

/** The photo as it lies, what is drawn on it, the handles of the chosen callout, the loupe and the crosshair. */
export function StagePlane({ photoUrl, laid, tool, callouts, chosen, draft, crosshair }: StagePlaneProps) {
  const { view, size } = laid;
  const frame = editingFrame(shownSize(size, view.zoom), shownSize(size));
  const now = withDraft({ callouts, chosen, draft, tool });
  return (
    <LaidPhoto
      {...{ photoUrl, laid }}
      drawn={<DrawingView drawing={calloutMarks({ callouts: now.callouts.map(withPlaceholder), ...frame })} />}
      loupeAt={draft?.loupe ?? null}
    >
      {now.chosen && <Handles callout={now.chosen} laid={laid} />}
      {crosshair && <CrosshairMark crosshair={crosshair} laid={laid} />}
    </LaidPhoto>
  );
}

function Handles({ callout, laid }: { callout: ShownCallout; laid: StagePlaneProps['laid'] }) {
  if (callout.kind === 'stroke') return null;
  return (
    <>
      {callout.points.map((point, place) => (
        <span key={place} class="callout-handle" style={placedAt(point, laid)} />
      ))}
    </>
  );
}

function CrosshairMark({ crosshair, laid }: { crosshair: Crosshair; laid: StagePlaneProps['laid'] }) {
  return (
    <>
      {crosshair.set.map((point, place) => (
        <span key={place} class="callout-handle" style={placedAt(point, laid)} />
      ))}
      <span class="callout-crosshair" style={placedAt(crosshair.at, laid)} />
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
