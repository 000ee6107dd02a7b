import type { Signal } from '@preact/signals';
import type { ComponentChildren, RefObject } from 'preact';
import { useId } from 'preact/hooks';
import type { usePointers } from './use-pointers.ts';
import type { useView } from './use-view.ts';
import { ZoomButtons } from './zoom-buttons.tsx';

interface StageFrameProps {
  stage: RefObject<HTMLDivElement | null>;
  view: ReturnType<typeof useView>;
  /** Moving the photo under one finger, in place of working on it. */
  moving: Signal<boolean>;
  pointers: ReturnType<typeof usePointers>;
  label: string;
  /** What the keys do, for who cannot see it. */
  keys: string;
  /** The stage itself was reached by the keyboard. */
  onReach: () => void;
  onLeave: () => void;
  /** True when the key was meant for the stage. */
  onKey: (event: KeyboardEvent) => boolean;
  children: ComponentChildren;
}

/** The stage a photo lies on: focus and keys, pointers, and the buttons that magnify. What lies on it are the children. */
export function StageFrame({
  stage,
  view,
  moving,
  pointers,
  label,
  keys,
  onReach,
  onLeave,
  onKey,
  children,
}: StageFrameProps) {
  const keysId = useId();
  const { laid, zoom, whole } = view;
  return (
    <div class="callout-stage-frame">
      <p class="unseen" id={keysId}>
        {keys}
      </p>
      <div
        ref={stage}
        class={isMoved(view, moving) ? 'callout-stage moving' : 'callout-stage'}
        role="application"
        aria-label={label}
        aria-describedby={keysId}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys work here
        tabIndex={0}
        onFocus={(event) => {
          if (event.target === event.currentTarget && event.currentTarget.matches(':focus-visible')) onReach();
        }}
        onBlur={onLeave}
        onKeyDown={(event) => {
          if (event.target !== stage.current || !onKey(event)) return;
          event.preventDefault();
          event.stopPropagation();
        }}
        {...pointers}
      >
        {children}
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
    </div>
  );
}

/** Whether one finger moves the photo: asked for, and there is something to move. */
export function isMoved({ laid }: Pick<ReturnType<typeof useView>, 'laid'>, moving: Signal<boolean>): boolean {
  return moving.value && laid !== null && laid.view.zoom > 1;
}
