import type { LogMapping } from './log-mapping.ts';
import { SLOT, SLOTS } from './log-rows.ts';
import type { CellMarks } from './scan-number.ts';
import { DATED_TIMES, TEXT_TIMES } from './time-cell.ts';

const DATES = ['iso', 'dayFirst', 'monthFirst'] as const;
/** What is done with the cells of a column. */
export const KIND = { skip: 0, number: 1, time: 2, date: 3, step: 4, state: 5 } as const;

export type RowPlan = ReturnType<typeof planOf>;

/** The mapping as arrays the inner loop can use. */
export function planOf({ layout, columns, timeFormat }: LogMapping) {
  const code = (text: string) => text.charCodeAt(0);
  const textTime = TEXT_TIMES.includes(timeFormat);
  const taken = new Set<number>();
  const date = columns.find(({ quantity }) => quantity === 'date');
  const uses = columns.map(({ quantity, counts }) => {
    if (quantity === 'step') return { kind: KIND.step, slot: -1 };
    if (quantity === 'state') return { kind: KIND.state, slot: -1 };
    if (quantity === 'date') return { kind: KIND.date, slot: -1 };
    const slot =
      quantity === 'charge'
        ? { out: SLOT.counterOut, in: SLOT.counterIn, net: SLOT.counterNet }[counts ?? 'net']
        : quantity === 'time' || quantity === 'current' || quantity === 'voltage' || quantity === 'temperature'
          ? SLOT[quantity]
          : -1;
    // One column for each quantity: the first.
    if (slot < 0 || taken.has(slot)) return { kind: KIND.skip, slot: -1 };
    taken.add(slot);
    return { kind: slot === SLOT.time && textTime ? KIND.time : KIND.number, slot };
  });
  const kinds = Uint8Array.from(uses, ({ kind }) => kind);
  const has = (kind: number) => kinds.includes(kind);
  return {
    kinds,
    slots: Int8Array.from(uses, ({ slot }) => slot),
    scales: Float64Array.from(columns, ({ scale, quantity }) => (quantity === 'time' ? timeScale(timeFormat) : scale)),
    offsets: Float64Array.from(columns, ({ offset }) => offset ?? 0),
    marks: {
      separator: code(layout.separator),
      decimalMark: code(layout.decimalMark),
      lineEnd: layout.lineEnd === 'lf' ? 10 : 13,
    } satisfies CellMarks,
    commentMark: [...(layout.commentMark ?? '')].map(code),
    readsTime: taken.has(SLOT.time),
    numberBase: !textTime && DATED_TIMES.includes(timeFormat),
    dateFormat: DATES.find((format) => format === date?.unit) ?? 'iso',
    has: {
      series: Array.from({ length: SLOTS }, (_, slot) => taken.has(slot)),
      step: has(KIND.step) || has(KIND.state),
      state: has(KIND.state),
    },
  };
}

function timeScale(format: LogMapping['timeFormat']): number {
  const scales: Partial<Record<typeof format, number>> = {
    milliseconds: 0.001,
    unixMilliseconds: 0.001,
    minutes: 60,
    hours: 3600,
    serialDays: 86_400,
  };
  return scales[format] ?? 1;
}
