import type { Instrument } from '../../../schema/live-tests/instrument.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { instrumentResultWords as say } from '../../../text/live-tests/results/instrument.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** The instruments and the accuracy their makers state. */
export function instrumentBlocks({ tests: { instruments } }: LiveContext): Block[] {
  if (instruments.length === 0) return [];
  const items = instruments.map((instrument) => ({ text: instrument.name, detail: accuracyWords(instrument) }));
  return [{ kind: 'list', items }];
}

function accuracyWords(instrument: Instrument): string {
  const { temperatureAbsoluteDegC: temperature } = instrument;
  const parts = [
    ...partsOf(say.voltage, instrument.voltageReadingPct, [instrument.voltageAbsoluteV, 'V']),
    ...partsOf(say.current, instrument.currentReadingPct, [instrument.currentAbsoluteA, 'A']),
    ...(temperature === undefined ? [] : [say.temperature(formatValue(temperature, '°C'))]),
    ...(instrument.note?.trim() ? [instrument.note.trim()] : []),
  ];
  return parts.length === 0 ? say.notStated : testWords.sentenced(parts);
}

function partsOf(
  words: (parts: string) => string,
  readingPct: number | undefined,
  [absolute, unit]: [number | undefined, string],
): string[] {
  const parts = [
    ...(readingPct === undefined ? [] : [say.reading(formatValue(readingPct, '%'))]),
    ...(absolute === undefined ? [] : [formatValue(absolute, unit)]),
  ];
  return parts.length === 0 ? [] : [words(say.plus(parts))];
}
