import type { RejectedRow, RejectReason } from './log-reading.ts';
import { REJECTED_KEPT } from './log-reading.ts';

/** Numbers of a row, by place in `RowValues`. */
export const SLOT = {
  time: 0,
  current: 1,
  voltage: 2,
  temperature: 3,
  counterOut: 4,
  counterIn: 5,
  counterNet: 6,
} as const;
export const SLOTS = 7;

/** Rows as they are read: one growing array for each quantity the log has, the line, the step and the state. */
export class LogRows {
  count = 0;
  readonly series: (Float64Array | null)[];
  line: Uint32Array;
  step: Uint32Array | null;
  /** 0 not said, 1 out, 2 in, 3 rest. */
  state: Uint8Array | null;
  rowsRead = 0;
  rejectedCount = 0;
  readonly rejected: RejectedRow[] = [];
  temperaturesLeftOut = 0;
  private capacity: number;

  constructor(has: { series: readonly boolean[]; step: boolean; state: boolean }, expectedRows: number) {
    this.capacity = Math.max(16, expectedRows);
    this.series = has.series.map((wanted) => (wanted ? new Float64Array(this.capacity) : null));
    this.line = new Uint32Array(this.capacity);
    this.step = has.step ? new Uint32Array(this.capacity) : null;
    this.state = has.state ? new Uint8Array(this.capacity) : null;
  }

  /** Four arguments and no object: called once for each of a million rows. */
  add(values: Float64Array, line: number, step: number, state: number): void {
    if (this.count === this.capacity) this.grow();
    const at = this.count++;
    const { series } = this;
    for (let slot = 0; slot < SLOTS; slot++) {
      const column = series[slot];
      if (column) column[at] = values[slot] as number;
    }
    this.line[at] = line;
    if (this.step) this.step[at] = step;
    if (this.state) this.state[at] = state;
  }

  reject(line: number, reason: RejectReason): void {
    this.rejectedCount++;
    if (this.rejected.length < REJECTED_KEPT) this.rejected.push({ line, reason });
  }

  private grow(): void {
    this.capacity = Math.ceil(this.capacity * 1.3) + 16;
    for (const [slot, column] of this.series.entries()) {
      if (column) this.series[slot] = grown(column, new Float64Array(this.capacity));
    }
    this.line = grown(this.line, new Uint32Array(this.capacity));
    if (this.step) this.step = grown(this.step, new Uint32Array(this.capacity));
    if (this.state) this.state = grown(this.state, new Uint8Array(this.capacity));
  }
}

function grown<T extends { set(from: T): void }>(from: T, into: T): T {
  into.set(from);
  return into;
}
