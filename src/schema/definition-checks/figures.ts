import type { Band, Checklist } from '../checklist.ts';
import type { Problem } from './problem.ts';

/** Our choice: a zone a thousand times as weighty as one of weight 1 leaves nothing of it to see. */
const MOST_WEIGHT = 1000;
/** Our choice: past every figure a record can hold in the units a measured item has (schema/figure-limits.ts). */
const MOST_LIMIT = 1e9;

/** No weight and no limit is so large that a sum or a difference of such would not be a figure any more. */
export function checkFigures({ zones, items }: Checklist): Problem[] {
  return [
    ...zones.flatMap(({ weight }, at) => within(`zones[${at}].weight`, weight, MOST_WEIGHT)),
    ...items.flatMap(({ measure, derive }, at) => [
      ...(measure?.inputs ?? []).flatMap(({ least, most }, place) => [
        ...within(`items[${at}].measure.inputs[${place}].least`, least, MOST_LIMIT),
        ...within(`items[${at}].measure.inputs[${place}].most`, most, MOST_LIMIT),
      ]),
      ...bandProblems(`items[${at}].measure.bands`, measure?.bands),
      ...bandProblems(`items[${at}].derive.bands`, derive?.bands),
    ]),
  ];
}

function bandProblems(place: string, bands: Readonly<Record<string, readonly Band[]>> | undefined): Problem[] {
  return Object.entries(bands ?? {}).flatMap(([name, list]) =>
    list.flatMap(({ grade: _grade, ...limits }, at) =>
      Object.entries(limits).flatMap(([limit, value]) => within(`${place}.${name}[${at}].${limit}`, value, MOST_LIMIT)),
    ),
  );
}

function within(place: string, value: number | undefined, most: number): Problem[] {
  if (value === undefined || Math.abs(value) <= most) return [];
  return [{ place, reason: `must be within ±${most}, got ${value}` }];
}
