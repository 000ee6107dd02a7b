import type { Reading } from '../../grading/derive/figure.ts';
import { gradesOf } from '../../grading/derive/grades-of.ts';
import type { ItemResult } from '../../grading/grading.ts';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import { DERIVATIONS } from '../../schema/figures.ts';
import { GRADES, gradeRank } from '../../schema/grade.ts';
import { formatTyped } from '../../text/format-number.ts';
import { formatValue } from '../../text/format-unit.ts';
import { derivedWords, figureWords, measuredWords } from '../../text/measured.ts';

/** What was measured of an item, in words: "charging blocked at −4 °C"; null where nothing was. */
export function foundWords(item: Item, measured: ItemResult['measured']): string | null {
  if (measured === null) return null;
  const { alternatives, orWorse } = measured.found;
  const said = alternatives.map((readings) => {
    const words = worstOf(item, readings).map((reading) => readingWords(item, reading));
    return [...new Set(words)].join(', ');
  });
  const words = measuredWords.or([...new Set(said)]);
  return orWorse ? `${words}, ${measuredWords.notAllRead}` : words;
}

/** The same with the readings behind a figure that is worked out of them: "2.5 °C (the BMS shows 24 °C, …)". */
export function foundWithReadings(
  item: Item,
  measured: ItemResult['measured'],
  answer: Answer | undefined,
): string | null {
  const found = foundWords(item, measured);
  const { measure } = item;
  if (found === null || measure === undefined || measure.figure === 'value' || answer?.kind !== 'readings')
    return found;
  const readings = measure.inputs.flatMap(({ id, title, unit }) => {
    const value = Object.hasOwn(answer.values, id) ? answer.values[id] : undefined;
    return value === undefined
      ? []
      : [measuredWords.reading(title, unit === 'cells' ? formatTyped(value) : formatValue(value, unit))];
  });
  return measuredWords.fromReadings(found, readings);
}

/** How a grade stands to what was measured; null where nothing was measured. */
export function gradeStanding({ measured, because }: ItemResult): string | null {
  if (measured === null) return null;
  if (measured.overrules !== null) return measuredWords.overruledBecause(measured.possible, measured.overrules);
  return because === 'measured' ? measuredWords.asMeasured : null;
}

function readingWords({ derive, measure }: Item, reading: Reading): string {
  if (derive !== undefined) return derivedWords(derive.from, reading, DERIVATIONS[derive.from].unit);
  return reading.figure === undefined ? '' : figureWords(reading.figure, measure?.unit ?? '');
}

/** The readings that decide: of those that can be worst, at most two. */
function worstOf(item: Item, readings: readonly Reading[]): Reading[] {
  const bands = item.derive?.bands ?? item.measure?.bands ?? {};
  const ranked = readings.map((reading) => {
    const grades = gradesOf(bands, { alternatives: [[reading]] }, GRADES);
    return { reading, rank: Math.max(...grades.map(gradeRank)) };
  });
  const worst = Math.max(...ranked.map(({ rank }) => rank));
  return ranked
    .filter(({ rank }) => rank === worst)
    .slice(0, 2)
    .map(({ reading }) => reading);
}
