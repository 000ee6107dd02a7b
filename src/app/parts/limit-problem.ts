import * as v from 'valibot';
import { fieldWords } from '../../text/fields.ts';
import { formatTyped } from '../../text/format-number.ts';
import { withUnit } from '../../text/format-unit.ts';
import type { ShownNumber } from './shown-number.ts';

type Shown = Pick<ShownNumber, 'unit' | 'toShown' | 'toStored'>;

/**
 * What is wrong with a number that is past what may be typed, or that the stored shape would not take, its limit said in
 * the unit shown; null where nothing is. Asked while the number is still in its box, so that nothing typed is stored and then set aside.
 */
export function limitProblem(schema: v.GenericSchema, typed: number, shown: Shown): string | null {
  const stored = shown.toStored?.(typed) ?? typed;
  const most = mostTyped(schema);
  if (most !== null && stored > most) return fieldWords.atMost(limitText(most, shown, Math.floor));
  const checked = v.safeParse(schema, stored);
  if (checked.success) return null;
  const [issue] = checked.issues;
  const limit = 'requirement' in issue && typeof issue.requirement === 'number' ? issue.requirement : null;
  if (issue.type === 'max_value' && limit !== null) return fieldWords.atMost(limitText(limit, shown, Math.floor));
  if (issue.type === 'min_value' && limit !== null) return fieldWords.atLeast(limitText(limit, shown, Math.ceil));
  return fieldWords.outOfRange;
}

function mostTyped(schema: v.GenericSchema): number | null {
  const figure = 'wrapped' in schema ? (schema.wrapped as v.GenericSchema) : schema;
  const { mostTyped: most } = v.getMetadata(figure);
  return typeof most === 'number' ? most : null;
}

/** A converted limit is rounded inwards, to four figures: what is said to fit does. */
function limitText(limit: number, { unit, toShown }: Shown, round: (value: number) => number): string {
  const shown = toShown?.(limit) ?? limit;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(shown) || 1)) - 3);
  const inside = Number((round(shown / step) * step).toPrecision(4));
  const text = formatTyped(shown === limit ? limit : inside);
  return unit === '' ? text : withUnit(text, unit);
}
