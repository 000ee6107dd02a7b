import { icon } from '../../drawing/icons.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import { Field } from '../fields/field.tsx';
import { TextField } from '../fields/text-field.tsx';
import type { CalloutItem } from './callout-legend.tsx';
import { calloutName, type ShownCallout } from './shown-callout.ts';

interface ChosenCalloutProps {
  callout: ShownCallout;
  items: readonly CalloutItem[];
  onWords: (text: string) => void;
  onItem: (itemId: string | null) => void;
  onRemove: () => void;
  onClose: () => void;
}

/** Longest text of a callout that is stored (src/schema/callout.ts). */
const MAX_WORDS = 320;

/** The callout in hand: its words, the question it belongs to, and a way to be rid of it. */
export function ChosenCallout({ callout, items, onWords, onItem, onRemove, onClose }: ChosenCalloutProps) {
  const { kind, number } = callout;
  const hasWords = kind === 'leader' || kind === 'text';
  return (
    <section class="callout-chosen" aria-label={calloutName(callout)}>
      <header>
        {number === null ? <DrawingView drawing={icon(kind)} /> : <span class="callout-number">{number}</span>}
        <h2>{calloutWords.kinds[kind]}</h2>
        <button type="button" class="button quiet" onClick={onRemove}>
          <DrawingView drawing={icon('bin')} />
          {calloutWords.remove}
        </button>
        <button type="button" class="button quiet square" aria-label={calloutWords.close} onClick={onClose}>
          <DrawingView drawing={icon('cross')} />
        </button>
      </header>
      {kind === 'cover' && <p class="small muted">{calloutWords.coverNote}</p>}
      <div class="callout-fields">
        {hasWords && (
          <TextField
            id="callout-words"
            label={calloutWords.wordsOf(kind)}
            value={callout.text ?? ''}
            maxLength={MAX_WORDS}
            onChange={onWords}
          />
        )}
        {kind !== 'cover' && items.length > 0 && (
          <Field id="callout-item" label={calloutWords.item} wrong={null}>
            <select
              id="callout-item"
              value={callout.itemId ?? ''}
              onChange={(event) => onItem(event.currentTarget.value === '' ? null : event.currentTarget.value)}
            >
              <option value="">{calloutWords.noItem}</option>
              {items.map((item) => (
                <option key={item.id} value={item.id}>
                  {item.title}
                </option>
              ))}
            </select>
          </Field>
        )}
      </div>
    </section>
  );
}
