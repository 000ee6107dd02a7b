import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { calloutMarks } from '../../drawing/callouts.ts';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import { CalloutMarks } from './callout-marks.tsx';
import { type Crosshair, keyStep, movedCrosshair, setPoint } from './crosshair.ts';
import { drawGesture, type Draft } from './draft.ts';
import { editingFrame } from './grip.ts';
import { Loupe } from './loupe.tsx';
import { pointsFromPath } from './shape-callout.ts';
import type { ShownCallout } from './shown-callout.ts';
import { usePointers } from './use-pointers.ts';
import { useView } from './use-view.ts';
import { shownSize, toImage, toStage } from './view.ts';
import { ZoomButtons } from './zoom-buttons.tsx';

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
  children?: ComponentChildren;
}

const CENTRE: Crosshair = { at: [0.5, 0.5], set: [] };

/** The photo under the fingers: draws, takes hold of what is drawn, magnifies; the same with the keys. */
export function PhotoStage(props: PhotoStageProps) {
  const { photoUrl, photo, tool, callouts, chosen, onDraw, onMove, onChoose, onRemove, onSay } = props;
  const stage = useRef<HTMLDivElement>(null);
  const keysId = useId();
  const { laid, zoom, pan, pinch, whole } = useView(stage, photo);
  const moving = useSignal(false);
  const draft = useSignal<Draft | null>(null);
  const crosshair = useSignal<Crosshair | null>(null);
  const sizes = laid && { shown: shownSize(laid.size, laid.view.zoom), whole: shownSize(laid.size) };

  const pointers = usePointers(moving.value && (laid?.view.zoom ?? 1) > 1, (effect, { finger }) => {
    crosshair.value = null;
    if (effect.kind === 'pan') pan(effect.byPx);
    else if (effect.kind === 'pinch') pinch(effect);
    else if (laid !== null && sizes !== null) {
      const step = drawGesture(draft.value, effect, {
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
  });

  function onKeyDown(event: KeyboardEvent) {
    if (event.target !== stage.current || sizes === null) return;
    const now = crosshair.value ?? CENTRE;
    const by = keyStep(event.key, { large: event.shiftKey, zoom: laid?.view.zoom ?? 1 });
    if (by !== null) crosshair.value = movedCrosshair(now, by);
    else if (event.key === 'Enter') {
      const step = setPoint(tool, now);
      crosshair.value = step.crosshair;
      const points = step.path && pointsFromPath(tool, step.path, sizes);
      if (points) onDraw(tool, points);
      else onSay(calloutWords.pointSet(step.crosshair.set.length));
    } else if (event.key === 'Delete' && chosen !== null) onRemove(chosen.id);
    else if (event.key === 'Escape' && crosshair.value !== null) crosshair.value = null;
    else if (event.key === 'Escape' && chosen !== null) onChoose(null);
    else if (event.key === '+') zoom(1.25);
    else if (event.key === '-') zoom(0.8);
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  return (
    <div class="callout-stage-frame">
      <p class="unseen" id={keysId}>
        {calloutWords.stageKeys}
      </p>
      <div
        ref={stage}
        class={moving.value ? 'callout-stage moving' : 'callout-stage'}
        role="application"
        aria-label={`${calloutWords.stage}. ${calloutWords.hints[tool]}`}
        aria-describedby={keysId}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys draw here
        tabIndex={0}
        onKeyDown={onKeyDown}
        onFocus={(event) => {
          if (event.target === stage.current && event.currentTarget.matches(':focus-visible')) crosshair.value ??= CENTRE;
        }}
        onBlur={() => {
          crosshair.value = null;
        }}
        {...pointers}
      >
        {laid && sizes && (
          <>
            <div
              class="callout-plane"
              style={{
                width: `${sizes.shown.widthPx}px`,
                height: `${sizes.shown.heightPx}px`,
                transform: `translate(${laid.view.leftPx}px, ${laid.view.topPx}px)`,
              }}
            >
              <img src={photoUrl} alt="" draggable={false} />
              <DrawingView
                drawing={calloutMarks({
                  callouts: drawn(callouts, draft.value),
                  ...editingFrame(sizes.shown, sizes.whole),
                })}
              />
            </div>
            <Handles callout={held(chosen, draft.value)} toStage={(point) => toStage(point, laid.view, laid.size)} />
            {crosshair.value && <CrosshairMark crosshair={crosshair.value} toStage={(point) => toStage(point, laid.view, laid.size)} />}
            <CalloutMarks
              callouts={callouts}
              zoom={laid.view.zoom}
              toStage={(point) => toStage(point, laid.view, laid.size)}
              onChoose={onChoose}
              onMove={onMove}
              onRemove={(id) => {
                onRemove(id);
                stage.current?.focus();
              }}
            />
            {draft.value?.loupeAt && (
              <Loupe
                photoUrl={photoUrl}
                at={draft.value.loupeAt}
                stageWidthPx={laid.size.stageWidthPx}
                photo={{ leftPx: laid.view.leftPx, topPx: laid.view.topPx, ...sizes.shown }}
              />
            )}
          </>
        )}
      </div>
      {laid && (
        <ZoomButtons
          zoom={laid.view.zoom}
          moving={moving.value}
          onZoom={zoom}
          onWhole={() => {
            whole();
            moving.value = false;
          }}
          onMoving={(on) => {
            moving.value = on;
          }}
        />
      )}
      {props.children}
    </div>
  );
}
