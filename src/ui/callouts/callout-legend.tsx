import { icon } from '../../drawing/icons.ts';
import type { LidOutcome } from '../../drawing/lid-glyph.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import { Lid } from '../lid.tsx';
import type { ShownCallout } from './shown-callout.ts';

/** A question that callouts of this photo may belong to. */
export interface CalloutItem {
  id: string;
  title: string;
  /** What was found there so far, for the lid beside the words. */
  outcome?: LidOutcome | null;
}

interface CalloutLegendProps {
  callouts: readonly ShownCallout[];
  items: readonly CalloutItem[];
  onChoose: (id: string) => void;
}

/** What the numbers stand for, and every other mark on the photo; each leads to its callout. */
export function CalloutLegend({ callouts, items, onChoose }: CalloutLegendProps) {
  if (callouts.length === 0) return <p class="callout-none muted small">{calloutWords.none}</p>;
  return (
    <ul class="callout-legend" aria-label={calloutWords.legend}>
      {callouts.map((callout) => {
        const item = items.find((one) => one.id === callout.itemId);
        const written = callout.text || item?.title;
        return (
          <li key={callout.id}>
            <button type="button" onClick={() => onChoose(callout.id)}>
              {callout.number === null ? (
                <DrawingView drawing={icon(callout.kind)} />
              ) : (
                <span class="callout-number">{callout.number}</span>
              )}
              <span class={written ? '' : 'muted'}>{written || fallback(callout)}</span>
              {item?.outcome && <Lid outcome={item.outcome} widthPx={20} />}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

function fallback({ kind }: ShownCallout): string {
  return kind === 'leader' || kind === 'text' ? calloutWords.noWords : calloutWords.kinds[kind];
}
