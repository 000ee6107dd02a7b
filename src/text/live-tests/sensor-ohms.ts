import { formatFixed, formatSignificant } from '../format-number.ts';
import { withUnit } from '../format-unit.ts';

/** From a sensor's ohms to its temperature, and back for the limits of the tests. */
export const sensorOhmsWords = {
  title: 'Only the sensor’s ohms to be had?',
  lead: 'Unplugged, across its two wires. An NTC sensor’s resistance falls as it warms. Take the two figures from its part number or sheet; the ones here are only the usual ones.',
  reference: 'At 25\u00a0°C',
  beta: 'B (beta)',
  measured: 'You measure',
  is: (tempDegC: number) => `That is ${withUnit(formatFixed(tempDegC, 1), '°C')}.`,
  none: 'No temperature belongs to so few ohms of this part.',
  limits: 'It will read about',
  limit: (tempDegC: number, resistanceOhm: number) =>
    `${withUnit(formatFixed(tempDegC, 0), '°C')}: ${withUnit(formatSignificant(resistanceOhm / 1000, 3), 'kΩ')}`,
  source:
    '1/T = 1/T₂₅ + ln(R/R₂₅)/B, T in kelvin. Off by about 1\u00a0K at 0\u00a0°C and 2.5\u00a0K at −20\u00a0°C for a usual 10 kΩ part; the sensor’s own table does better.',
};
