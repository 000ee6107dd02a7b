import { photoRuler } from '../../../calc/photo-ruler.ts';
import type { RulerResult } from '../../../grading/live-tests/results.ts';
import type { ImagePoint } from '../../../schema/callout.ts';
import { formatLength } from '../../../text/format-unit.ts';
import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';

/** Three digits: no photo tells more. */
export function shownDistance(mm: number, units: UnitChoice): string {
  return formatLength(Number(mm.toPrecision(3)), units);
}

/** "8.23 mm ± 0.4 mm"; without the uncertainty where it cannot be told. */
export function distanceWords(distance: RulerResult['distance'], units: UnitChoice): string {
  if (distance === null) return say.none;
  const shown = shownDistance(distance.distanceMm, units);
  if (distance.uncertaintyMm === null) return say.about(shown);
  return say.plusMinus(shown, formatLength(Number(distance.uncertaintyMm.toPrecision(2)), units));
}

/** While points are being shifted: the distance as it would be in the plane of the card. */
export function distanceWhileSet(
  points: readonly ImagePoint[],
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
  units: UnitChoice,
): string {
  const [a, b, c, d, from, to] = points;
  if (!a || !b || !c || !d || !from || !to) return '';
  const size = { imageWidthPx: widthPx, imageHeightPx: heightPx };
  const found = photoRuler({ corners: [a, b, c, d], from, to, ...size, offPlaneMm: 0 });
  return found === null ? say.none : say.about(shownDistance(found.distanceMm, units));
}
