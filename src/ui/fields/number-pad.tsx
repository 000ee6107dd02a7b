import { icon } from '../../drawing/icons.ts';
import { padWords as say } from '../../text/live-tests/cells.ts';
import { DrawingView } from '../drawing-view.tsx';
import { eraseBefore, type TypedBox, turnSign, typeInto } from './pad-typing.ts';
import './number-pad.css';

interface NumberPadProps {
  /** The box that is typed into; it keeps the focus. */
  box: HTMLInputElement;
  label: string;
  onNext: () => void;
  onAway: () => void;
  /** The phone's own keyboard is wanted instead. */
  onKeyboard: () => void;
}

/** In the order in which they stand, beside Next and the rest. */
const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3'] as const;

/** Large keys for a gloved thumb, at the foot of the screen; the same on every phone. */
export function NumberPad({ box, label, onNext, onAway, onKeyboard }: NumberPadProps) {
  function write(change: (typed: TypedBox) => TypedBox) {
    const next = change({ text: box.value, from: box.selectionStart, to: box.selectionEnd });
    box.value = next.text;
    box.setSelectionRange(next.from, next.to);
    box.dispatchEvent(new Event('input', { bubbles: true }));
  }
  return (
    <fieldset
      class="number-pad"
      aria-label={say.name}
      // The box keeps the focus, and with it its caret.
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="pad-head">
        <span class="small">{label}</span>
        <button type="button" class="button quiet" onClick={onKeyboard}>
          {say.keyboard}
        </button>
        <button type="button" class="button quiet square" aria-label={say.away} onClick={onAway}>
          <DrawingView drawing={icon('cross')} />
        </button>
      </div>
      {DIGITS.map((digit) => (
        <button key={digit} type="button" class="button key" onClick={() => write((typed) => typeInto(typed, digit))}>
          {digit}
        </button>
      ))}
      <button
        type="button"
        class="button key"
        aria-label={say.point}
        onClick={() => write((typed) => typeInto(typed, '.'))}
      >
        .
      </button>
      <button type="button" class="button key" onClick={() => write((typed) => typeInto(typed, '0'))}>
        0
      </button>
      <button type="button" class="button key" aria-label={say.sign} onClick={() => write(turnSign)}>
        ±
      </button>
      <button type="button" class="button key pad-erase" aria-label={say.erase} onClick={() => write(eraseBefore)}>
        ⌫
      </button>
      <button type="button" class="button primary key pad-next" onClick={onNext}>
        {say.next}
      </button>
    </fieldset>
  );
}
