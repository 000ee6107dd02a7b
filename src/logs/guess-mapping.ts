import { guessColumns } from './guess-columns.ts';
import { guessLayout } from './guess-layout.ts';
import { guessSign } from './guess-sign.ts';
import { guessTimeFormat } from './guess-time-format.ts';
import type { LayoutChoice } from './log-layout.ts';
import type { LogMapping } from './log-mapping.ts';
import { oneByteText } from './log-text.ts';
import { sampleRows } from './sample-rows.ts';
import { unitOf } from './unit-words.ts';

/** Finds how a log is to be read. What a person has set about its layout is kept, everything else found around it. */
export function guessMapping(bytes: Uint8Array, choice: LayoutChoice = {}): LogMapping {
  const layout = guessLayout(bytes, choice);
  const text = oneByteText(bytes.subarray(layout.byteOrderMarkBytes), layout.encoding);
  const sample = sampleRows(text, layout);
  const columns = guessColumns(layout, sample);
  const time = columns.findIndex(({ quantity }) => quantity === 'time');
  const timeUse = columns[time];
  const timeFormat = guessTimeFormat({
    cells: sample.map((row) => row[time] ?? '').filter((cell) => cell !== ''),
    decimalMark: layout.decimalMark,
    unit: timeUse === undefined || timeUse.unitFrom === 'assumed' ? null : unitOf(timeUse.unit),
    withDate: columns.some(({ quantity }) => quantity === 'date'),
  });
  const mapping: LogMapping = { layout, columns, timeFormat, outIs: 'positive', signBecause: 'noCurrent' };
  const { outIs, because } = guessSign(text, mapping);
  return { ...mapping, outIs, signBecause: because };
}
