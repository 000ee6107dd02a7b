import { formatShiftS } from '../../text/format-elapsed.ts';
import { shootClockWords as say } from '../../text/shoot-clock.ts';
import { isStorableOffset } from './offset.ts';

const STEPS_MS = [-10_000, -1000, 1000, 10_000];

/** By how much the film is off the clock, moved a second or ten at a time. */
export function ShiftButtons({ offsetMs, onShift }: { offsetMs: number; onShift: (offsetMs: number) => void }) {
  return (
    <section class="stack">
      <h3>{say.offset}</h3>
      <p class="small" role="status">
        {offsetMs === 0 ? say.noShift : say.shift(formatShiftS(offsetMs))}
      </p>
      <div class="shift-buttons">
        {STEPS_MS.map((stepMs) => (
          <button
            key={stepMs}
            type="button"
            class="button"
            disabled={!isStorableOffset(offsetMs + stepMs)}
            onClick={() => onShift(offsetMs + stepMs)}
          >
            {formatShiftS(stepMs)}
          </button>
        ))}
      </div>
      <p class="small muted">{say.offsetLead}</p>
    </section>
  );
}
