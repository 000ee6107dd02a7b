import '../../ui/callouts/callouts.css';
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { calloutMarks } from '../../drawing/callouts.ts';
import type { RecordPhoto } from '../../record/pack-record.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { words } from '../../text/words.ts';
import { editingFrame } from '../../ui/callouts/grip.ts';
import { LaidPhoto } from '../../ui/callouts/laid-photo.tsx';
import { isMoved, StageFrame } from '../../ui/callouts/stage-frame.tsx';
import { usePointers } from '../../ui/callouts/use-pointers.ts';
import { useView } from '../../ui/callouts/use-view.ts';
import { shownSize } from '../../ui/callouts/view.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DrawingView } from '../../ui/drawing-view.tsx';
import { coversOf } from './covers-of.ts';

interface CloserLookProps {
  title: string;
  photo: RecordPhoto;
  photoUrl: string;
  onClose: () => void;
}

const FACTOR = 1.6;
const STEP_PX = 60;

/** A photo over the whole screen, to be magnified and moved; what is covered stays covered. */
export function CloserLook({ title, photo, photoUrl, onClose }: CloserLookProps) {
  const stage = useRef<HTMLDivElement>(null);
  const view = useView(stage, photo);
  const moving = useSignal(true);
  const { laid, zoom, pan, pinch } = view;
  const pointers = usePointers(isMoved(view, moving), (effect) => {
    if (effect.kind === 'pan') pan(effect.byPx);
    if (effect.kind === 'pinch') pinch(effect);
  });
  const keys: Readonly<Record<string, () => void>> = {
    '+': () => zoom(FACTOR),
    '=': () => zoom(FACTOR),
    '-': () => zoom(1 / FACTOR),
    ArrowLeft: () => pan([STEP_PX, 0]),
    ArrowRight: () => pan([-STEP_PX, 0]),
    ArrowUp: () => pan([0, STEP_PX]),
    ArrowDown: () => pan([0, -STEP_PX]),
  };
  function onKey({ key }: KeyboardEvent): boolean {
    const press = Object.hasOwn(keys, key) ? keys[key] : undefined;
    press?.();
    return press !== undefined;
  }
  const frame = laid && editingFrame(shownSize(laid.size, laid.view.zoom), shownSize(laid.size));
  return (
    <Dialog title={title} whole onClose={onClose}>
      <div class="closer-look">
        <StageFrame
          {...{ stage, view, moving, pointers, onKey }}
          label={say.photoAlt}
          keys={say.stageKeys}
          onReach={() => undefined}
          onLeave={() => undefined}
        >
          {laid && frame && (
            <LaidPhoto
              {...{ photoUrl, laid }}
              drawn={<DrawingView drawing={calloutMarks({ callouts: coversOf(photo), ...frame })} />}
              loupeAt={null}
            >
              {null}
            </LaidPhoto>
          )}
        </StageFrame>
      </div>
      <button type="button" class="button primary" onClick={onClose}>
        {words.close}
      </button>
    </Dialog>
  );
}
