import { fieldWords } from '../../text/fields.ts';
import { inFromMm, mmFromIn } from '../../units/length-in.ts';
import { kgFromLb, lbFromKg } from '../../units/mass-lb.ts';
import { degCFromDegF, degFFromDegC } from '../../units/temperature.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';

/** How a stored number is shown in a box, and what may be typed there. */
export interface ShownNumber {
  unit: string;
  /** Of the number as shown: what is wrong with it, or null. */
  check: (value: number) => string | null;
  whole?: boolean;
  signed?: boolean;
  /** Kept in the other system of units by some: six digits are shown. */
  converted?: boolean;
  toShown?: (stored: number) => number;
  toStored?: (shown: number) => number;
}

export function shownMass(units: UnitChoice): ShownNumber {
  return units === 'imperial'
    ? { unit: 'lb', check: positive, converted: true, toShown: lbFromKg, toStored: kgFromLb }
    : { unit: 'kg', check: positive, converted: true };
}

export function shownLength(units: UnitChoice): ShownNumber {
  return units === 'imperial'
    ? { unit: 'in', check: positive, converted: true, toShown: inFromMm, toStored: mmFromIn }
    : { unit: 'mm', check: positive, converted: true };
}

export function shownTemperature(units: UnitChoice): ShownNumber {
  return units === 'imperial'
    ? {
        unit: '°F',
        signed: true,
        converted: true,
        check: (value) => believable(degCFromDegF(value)),
        toShown: degFFromDegC,
        toStored: degCFromDegF,
      }
    : { unit: '°C', signed: true, converted: true, check: believable };
}

export function positive(value: number): string | null {
  return value > 0 ? null : fieldWords.positive;
}
export function notNegative(value: number): string | null {
  return value >= 0 ? null : fieldWords.negative;
}
function believable(tempDegC: number): string | null {
  if (tempDegC < -273.15) return fieldWords.tooCold;
  return tempDegC <= 500 ? null : fieldWords.tooHot;
}
