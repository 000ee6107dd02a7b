import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { CalloutMarks } from './callout-marks.tsx';
import { type Draft, drawGesture } from './draft.ts';
import type { GestureEffect } from './gesture.ts';
import type { ShownCallout } from './shown-callout.ts';
import { isMoved, StageFrame } from './stage-frame.tsx';
import { StagePlane } from './stage-plane.tsx';
import { useCrosshair } from './use-crosshair.ts';
import { usePointers } from './use-pointers.ts';
import { useView } from './use-view.ts';
import { shownSize, toImage, toStage } from './view.ts';

export interface PhotoStageProps {
  photoUrl: string;
  photo: { widthPx: number; heightPx: number };
  tool: CalloutKind;
  callouts: readonly ShownCallout[];
  chosen: ShownCallout | null;
  onDraw: (kind: CalloutKind, points: ImagePoint[]) => void;
  onMove: (id: string, points: ImagePoint[]) => void;
  onChoose: (id: string | null) => void;
  onRemove: (id: string) => void;
  onSay: (words: string) => void;
}

/** The photo under the fingers: draws, takes hold of what is drawn, magnifies; the same with the keys. */
export function PhotoStage(props: PhotoStageProps) {
  const { photoUrl, photo, tool, callouts, chosen, onDraw, onMove, onChoose, onRemove, onSay } = props;
  const stage = useRef<HTMLDivElement>(null);
  const view = useView(stage, photo);
  const { laid, zoom, pan, pinch } = view;
  const moving = useSignal(false);
  const draft = useSignal<Draft | null>(null);
  const sizes = laid && { shown: shownSize(laid.size, laid.view.zoom), whole: shownSize(laid.size) };
  const crosshair = useCrosshair({
    tool,
    sizes,
    zoom: laid?.view.zoom ?? 1,
    chosenId: chosen?.id ?? null,
    onZoom: zoom,
    onDraw,
    onChoose,
    onRemove,
    onSay,
  });

  function onEffect(effect: GestureEffect, { finger }: { finger: boolean }) {
    crosshair.hide();
    if (effect.kind === 'pan') pan(effect.byPx);
    if (effect.kind === 'pinch') pinch(effect);
    if (laid === null || sizes === null || effect.kind === 'pan' || effect.kind === 'pinch') return;
    const step = drawGesture(draft.peek(), effect, {
      tool,
      callouts,
      chosen,
      finger,
      sizes,
      toImage: (at) => toImage(at, laid.view, laid.size),
    });
    draft.value = step.draft;
    if (step.done?.kind === 'drawn') onDraw(tool, step.done.points);
    if (step.done?.kind === 'moved') onMove(step.done.id, step.done.points);
    if (step.done?.kind === 'chosen') onChoose(step.done.id);
  }
  const pointers = usePointers(isMoved(view, moving), onEffect);

  return (
    <StageFrame
      {...{ stage, view, moving, pointers }}
      label={`${calloutWords.stage}. ${calloutWords.hints[tool]}`}
      keys={calloutWords.stageKeys}
      onReach={crosshair.show}
      onLeave={crosshair.hide}
      onKey={crosshair.press}
    >
      {laid && (
        <StagePlane
          {...{ photoUrl, laid, tool, callouts, chosen }}
          draft={draft.value}
          crosshair={crosshair.crosshair}
        />
      )}
      {laid && (
        <CalloutMarks
          {...{ callouts, onChoose, onMove }}
          zoom={laid.view.zoom}
          toStage={(point) => toStage(point, laid.view, laid.size)}
          onRemove={(id) => {
            onRemove(id);
            stage.current?.focus();
          }}
        />
      )}
    </StageFrame>
  );
}
