import { cellKind, cellNumber, plainCell } from './cell-kind.ts';
import { isoStamp } from './iso-stamp.ts';
import type { LogMapping } from './log-mapping.ts';
import type { RejectReason } from './log-reading.ts';
import { LogRows, SLOT, SLOTS } from './log-rows.ts';
import { logText } from './log-text.ts';
import { KIND, planOf, type RowPlan } from './row-plan.ts';
import { type CellMarks, scanEnd, scanNumber } from './scan-number.ts';
import { stateOf } from './state-words.ts';
import { timeCell } from './time-cell.ts';

/** No pack, cell or shunt on a bench shows a hundred thousand volts or amperes; 3.40E+38 means "no reading". Our choice. */
const SENTINEL = 1e5;
/** Seconds: three thousand years, and so much is no time of a log. Our choice. */
const MOST_TIME_S = 1e11;
/** A counter of a charge that no pack has holds no reading. Our choice, that of schema/figure-limits.ts a thousandfold. */
const MOST_COUNTED_AH = 1e9;
/** Sensors here live between these; -2500 °C means "not fitted". Our choice. */
const TEMPERATURE_DEG_C = { low: -100, high: 500 };

/**
 * Reads rows of a log from its bytes, some at a time, as a mapping says, into `rows`. Nothing is put in order here and
 * nothing merged; a row that cannot be read is counted with its reason. Cells become numbers without becoming strings.
 */
export class RowReader {
  readonly rows: LogRows;
  /** Day of the first dated row, so that seconds keep their fractions. */
  baseDays: number | null = null;
  position: number;
  private line = 1;
  private readonly bytes: Uint8Array;
  private readonly tail: Uint8Array;
  private readonly mapping: LogMapping;
  private readonly plan: RowPlan;
  private readonly values = new Float64Array(SLOTS);
  private readonly stamp = { days: 0, seconds: 0 };
  private readonly states = new Map<number, number>();
  private readonly days = new Map<number, number | null>();

  /** `bytes` is one byte a character, without a byte order mark. */
  constructor(bytes: Uint8Array, mapping: LogMapping, span?: { from: number; to: number; line: number }) {
    this.mapping = mapping;
    this.plan = planOf(mapping);
    const { lineEnd } = this.plan.marks;
    const to = span?.to ?? bytes.length;
    const lastEnd = to === 0 ? -1 : bytes.lastIndexOf(lineEnd, to - 1);
    this.bytes = bytes.subarray(0, lastEnd + 1);
    this.tail = new Uint8Array(to - lastEnd).fill(lineEnd);
    this.tail.set(bytes.subarray(lastEnd + 1, to));
    this.position = span?.from ?? 0;
    this.line = span?.line ?? 1;
    if (span === undefined) this.skipLines(mapping.layout.firstDataLine - 1);
    this.rows = new LogRows(this.plan.has, expectedRows(this.bytes, this.position, lineEnd));
  }

  /** Reads up to `most` lines; false once all are read. */
  read(most: number): boolean {
    const { bytes } = this;
    for (let done = 0; done < most; done++) {
      if (this.position >= bytes.length) {
        if (this.tail.length > 1) this.readLine(this.tail, 0);
        return false;
      }
      this.position = this.readLine(bytes, this.position);
    }
    return true;
  }

  private skipLines(count: number): void {
    const { lineEnd } = this.plan.marks;
    for (let skipped = 0; skipped < count; skipped++) {
      const end = this.bytes.indexOf(lineEnd, this.position);
      this.position = end < 0 ? this.bytes.length : end + 1;
      this.line++;
    }
  }

  /** Reads the line that begins at `from`; where the next begins. */
  private readLine(bytes: Uint8Array, from: number): number {
    const { kinds, slots, scales, offsets, marks, commentMark } = this.plan;
    const { separator, lineEnd } = marks;
    const { values } = this;
    const line = this.line++;
    let at = from;
    while (bytes[at] === 32 || bytes[at] === 13) at++;
    if (bytes[at] === lineEnd) return at + 1;
    this.rows.rowsRead++;
    if (bytes[at] === 91 || startsWith(bytes, at, commentMark)) {
      this.rows.reject(line, 'notARow');
      return bytes.indexOf(lineEnd, at) + 1;
    }
    values.fill(Number.NaN);
    let seen = 0;
    let bad = false;
    let badTime = false;
    let badTemperature = false;
    let step = 0;
    let state = 0;
    let dateDays: number | null = null;
    const columns = kinds.length;
    for (let column = 0; ; column++) {
      const kind = column < columns ? (kinds[column] as number) : KIND.skip;
      if (kind === KIND.number) {
        const slot = slots[column] as number;
        const number = scanNumber(bytes, at, marks);
        if (scanEnd >= 0) {
          at = scanEnd;
          // Adding an offset of 0 also makes a plain zero of a printed -0.
          values[slot] = number * (scales[column] as number) + (offsets[column] as number);
          seen |= 1 << slot;
        } else if (bytes[at] !== separator && bytes[at] !== lineEnd) {
          const end = cellEnd(bytes, at, marks);
          const text = this.text(bytes, at, end);
          const slow = cellNumber(text, this.mapping.layout.decimalMark);
          if (!Number.isNaN(slow)) {
            values[slot] = slow * (scales[column] as number) + (offsets[column] as number);
            seen |= 1 << slot;
          } else if (cellKind(text, this.mapping.layout.decimalMark) !== 'empty') {
            if (slot === SLOT.time) badTime = true;
            else if (slot === SLOT.temperature) badTemperature = true;
            else if (slot <= SLOT.voltage) bad = true;
          }
          at = end;
        }
      } else if (kind === KIND.skip) {
        at = cellEnd(bytes, at, marks);
      } else {
        const end = cellEnd(bytes, at, marks);
        if (kind === KIND.time) {
          if (this.readTime(bytes, at, end)) {
            values[SLOT.time] = this.stamp.seconds + (this.stamp.days - this.baseFrom(this.stamp.days)) * 86_400;
            seen |= 1;
          } else badTime = true;
        } else if (kind === KIND.date) {
          dateDays = this.dayOf(bytes, at, end);
          badTime ||= dateDays === null;
        } else if (kind === KIND.step) {
          step = hash(bytes, at, end, step);
        } else {
          const code = hash(bytes, at, end, 0);
          state = this.states.get(code) ?? this.learnState(code, this.text(bytes, at, end));
          step = Math.imul(step ^ state, 16_777_619) >>> 0;
        }
        at = end;
      }
      if (bytes[at] === lineEnd) break;
      at++;
      if (separator === 32) {
        while (bytes[at] === 32) at++;
        if (bytes[at] === lineEnd) break;
      }
    }
    if (dateDays !== null) {
      values[SLOT.time] = (values[SLOT.time] as number) + (dateDays - this.baseFrom(dateDays)) * 86_400;
    } else if (this.plan.numberBase && seen & 1) {
      const seconds = values[SLOT.time] as number;
      values[SLOT.time] = seconds - this.baseFrom(Math.floor(seconds / 86_400)) * 86_400;
    }
    const reason = this.reasonAgainst(seen, badTime, bad);
    if (reason !== null) {
      this.rows.reject(line, reason);
    } else {
      this.checkTemperature(badTemperature);
      this.checkCounters();
      this.rows.add(values, line, step, state);
    }
    return at + 1;
  }

  private reasonAgainst(seen: number, badTime: boolean, bad: boolean): RejectReason | null {
    if (badTime || (seen & 1 && !(Math.abs(this.values[SLOT.time] as number) <= MOST_TIME_S))) return 'badTime';
    if (this.plan.readsTime && !(seen & 1)) return seen === 0 && !bad ? 'tooFewCells' : 'badTime';
    if (bad) return 'notANumber';
    if ((seen & 6) === 0) return 'emptyCell';
    const currentA = this.values[SLOT.current] as number;
    const voltageV = this.values[SLOT.voltage] as number;
    return Math.abs(currentA) > SENTINEL || Math.abs(voltageV) > SENTINEL ? 'sentinel' : null;
  }

  private checkTemperature(bad: boolean): void {
    const degC = this.values[SLOT.temperature] as number;
    if (bad || degC < TEMPERATURE_DEG_C.low || degC > TEMPERATURE_DEG_C.high) {
      this.values[SLOT.temperature] = Number.NaN;
      this.rows.temperaturesLeftOut++;
    }
  }

  private checkCounters(): void {
    for (const slot of [SLOT.counterOut, SLOT.counterIn, SLOT.counterNet]) {
      if (!(Math.abs(this.values[slot] as number) <= MOST_COUNTED_AH)) this.values[slot] = Number.NaN;
    }
  }

  private baseFrom(days: number): number {
    this.baseDays ??= days;
    return this.baseDays;
  }

  private readTime(bytes: Uint8Array, from: number, to: number): boolean {
    const { timeFormat } = this.mapping;
    if (timeFormat === 'iso' && isoStamp(bytes, { from, to }, this.stamp)) return true;
    const cell = timeCell(plainCell(this.text(bytes, from, to)), timeFormat);
    if (cell === null) return false;
    this.stamp.days = cell.days;
    this.stamp.seconds = cell.seconds;
    return true;
  }

  /** Days are few and rows are many: each is read once. */
  private dayOf(bytes: Uint8Array, from: number, to: number): number | null {
    const code = hash(bytes, from, to, 0);
    const known = this.days.get(code);
    if (known !== undefined) return known;
    const days = timeCell(plainCell(this.text(bytes, from, to)), this.plan.dateFormat)?.days ?? null;
    this.days.set(code, days);
    return days;
  }

  private learnState(code: number, text: string): number {
    const state = stateOf(plainCell(text));
    this.states.set(code, state);
    return state;
  }

  private text(bytes: Uint8Array, from: number, to: number): string {
    return logText(bytes.subarray(from, to), this.mapping.layout.encoding === 'utf8' ? 'utf8' : 'latin1');
  }
}

function cellEnd(bytes: Uint8Array, from: number, { separator, lineEnd }: CellMarks): number {
  let at = from;
  let quoted = bytes[at] === 34;
  if (quoted) at++;
  while (bytes[at] !== lineEnd && (quoted || bytes[at] !== separator)) {
    if (bytes[at] === 34) quoted = !quoted;
    at++;
  }
  return at;
}

function startsWith(bytes: Uint8Array, at: number, mark: readonly number[]): boolean {
  return mark.length > 0 && mark.every((byte, place) => bytes[at + place] === byte);
}

/** FNV-1a, 32 bits: only whether two neighbours differ is asked of it. */
function hash(bytes: Uint8Array, from: number, to: number, seed: number): number {
  let value = (2_166_136_261 ^ seed) >>> 0;
  for (let at = from; at < to; at++) {
    const byte = bytes[at] as number;
    if (byte !== 32 && byte !== 13) value = Math.imul(value ^ byte, 16_777_619);
  }
  return value >>> 0;
}

/** From the first hundred lines, with a twentieth to spare. */
function expectedRows(bytes: Uint8Array, from: number, lineEnd: number): number {
  let at = from;
  let lines = 0;
  while (lines < 100 && at < bytes.length) {
    const end = bytes.indexOf(lineEnd, at);
    if (end < 0) break;
    at = end + 1;
    lines++;
  }
  return lines === 0 ? 16 : Math.ceil((1.05 * lines * (bytes.length - from)) / (at - from));
}
