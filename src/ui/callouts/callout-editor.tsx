import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { icon } from '../../drawing/icons.ts';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import { type CalloutItem, CalloutLegend } from './callout-legend.tsx';
import { ChosenCallout } from './chosen-callout.tsx';
import type { EditedCallout } from './editing.ts';
import { PhotoStage } from './photo-stage.tsx';
import { calloutName, type ShownCallout, shownCallouts } from './shown-callout.ts';
import { ToolBar } from './tool-bar.tsx';
import { useEditing } from './use-editing.ts';
import './callouts.css';

export interface CalloutEditorProps {
  photoId: string;
  photoUrl: string;
  widthPx: number;
  heightPx: number;
  /** As stored, in the order in which they were made. Taken up when the editor opens; from then on it keeps its own. */
  callouts: readonly EditedCallout[];
  /** Questions a callout may belong to. */
  items: readonly CalloutItem[];
  /** The question of the photo, given to new callouts. */
  itemId?: string | null;
  newId: () => string;
  /** Store this, at once. One without `made` is new. */
  onPut: (callout: EditedCallout) => void;
  onRemove: (id: string) => void;
  onDone: () => void;
  /** The row above the photo: "If it smokes", "saved". */
  children?: ComponentChildren;
}

/** A photo over the whole screen, to be drawn on. Every change is given out at once; undo and redo are changes as well. */
export function CalloutEditor(props: CalloutEditorProps) {
  const { photoId, photoUrl, widthPx, heightPx, items, itemId, newId, onDone } = props;
  const tool = useSignal<CalloutKind>('leader');
  const chosenId = useSignal<string | null>(null);
  const said = useSignal('');
  const edits = useEditing(props);
  const callouts = shownCallouts(edits.callouts);
  const chosen = callouts.find((callout) => callout.id === chosenId.value) ?? null;

  function draw(kind: CalloutKind, points: ImagePoint[]) {
    const callout: EditedCallout = { id: newId(), photoId, kind, points };
    if (itemId && kind !== 'cover') callout.itemId = itemId;
    edits.put(callout);
    chosenId.value = callout.id;
    const placed = shownCallouts([...edits.callouts, callout]).at(-1);
    if (placed) said.value = calloutWords.placed(calloutName(placed));
    if (kind === 'text') focusWords();
  }
  function remove(callout: ShownCallout) {
    edits.remove(callout.id);
    chosenId.value = null;
    said.value = calloutWords.removed(calloutName(callout));
  }

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) edits.redo();
      else edits.undo();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  });

  return (
    <section class="callout-editor" aria-label={calloutWords.editor}>
      {props.children && <div class="callout-head">{props.children}</div>}
      <PhotoStage
        photoUrl={photoUrl}
        photo={{ widthPx, heightPx }}
        tool={tool.value}
        callouts={callouts}
        chosen={chosen}
        onDraw={draw}
        onMove={(id, points) => edits.change(id, { points })}
        onChoose={(id) => {
          chosenId.value = id;
        }}
        onRemove={(id) => {
          const callout = callouts.find((one) => one.id === id);
          if (callout) remove(callout);
        }}
        onSay={(words) => {
          said.value = words;
        }}
      />
      <div class="callout-desk">
        <div class="callout-paper">
          {chosen ? (
            <ChosenCallout
              key={chosen.id}
              callout={chosen}
              items={items}
              onWords={(text) => edits.change(chosen.id, { text }, 'words')}
              onItem={(id) => edits.change(chosen.id, { itemId: id ?? undefined })}
              onRemove={() => remove(chosen)}
              onClose={() => {
                chosenId.value = null;
              }}
            />
          ) : (
            <CalloutLegend
              callouts={callouts}
              items={items}
              onChoose={(id) => {
                chosenId.value = id;
              }}
            />
          )}
        </div>
        <p class="callout-hint small muted">{calloutWords.hints[tool.value]}</p>
        <ToolBar
          tool={tool.value}
          onTool={(next) => {
            tool.value = next;
            chosenId.value = null;
          }}
        />
        <div class="callout-dock">
          <button type="button" class="button" disabled={!edits.canUndo} onClick={edits.undo}>
            <DrawingView drawing={icon('undo')} />
            {calloutWords.undo}
          </button>
          <button type="button" class="button" disabled={!edits.canRedo} onClick={edits.redo}>
            <DrawingView drawing={icon('redo')} />
            {calloutWords.redo}
          </button>
          <button type="button" class="button primary" onClick={onDone}>
            {calloutWords.done}
          </button>
        </div>
      </div>
      <p class="unseen" role="status">
        {said.value}
      </p>
    </section>
  );
}

/** After the box has been drawn. */
function focusWords() {
  requestAnimationFrame(() => document.getElementById('callout-words')?.focus());
}
