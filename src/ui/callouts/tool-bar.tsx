import { icon } from '../../drawing/icons.ts';
import { CALLOUT_KINDS, type CalloutKind } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';

/** The six things that can be drawn; the one in hand is inked in. */
export function ToolBar({ tool, onTool }: { tool: CalloutKind; onTool: (tool: CalloutKind) => void }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of switches, not of fields
    <div class="callout-tools" role="group" aria-label={calloutWords.tools}>
      {CALLOUT_KINDS.map((kind) => (
        <button key={kind} type="button" class="button" aria-pressed={kind === tool} onClick={() => onTool(kind)}>
          <DrawingView drawing={icon(kind)} />
          {calloutWords.kinds[kind]}
        </button>
      ))}
    </div>
  );
}
