import type { LogQuantity } from './log-mapping.ts';

/** A unit a column may be in: the number times `scale`, plus `offset` if any, is in s, A, V, W, Ah, Wh or °C. */
export interface LogUnit {
  quantity: LogQuantity;
  unit: string;
  scale: number;
  offset?: number;
}

/** Every unit the reader knows, the usual one of each quantity first. Fahrenheit as in ISO 80000-5, item 5-2. */
export const LOG_UNITS: readonly LogUnit[] = [
  { quantity: 'time', unit: 's', scale: 1 },
  { quantity: 'time', unit: 'ms', scale: 0.001 },
  { quantity: 'time', unit: 'min', scale: 60 },
  { quantity: 'time', unit: 'h', scale: 3600 },
  { quantity: 'time', unit: 'd', scale: 86400 },
  { quantity: 'current', unit: 'A', scale: 1 },
  { quantity: 'current', unit: 'mA', scale: 0.001 },
  { quantity: 'current', unit: 'µA', scale: 1e-6 },
  { quantity: 'voltage', unit: 'V', scale: 1 },
  { quantity: 'voltage', unit: 'mV', scale: 0.001 },
  { quantity: 'power', unit: 'W', scale: 1 },
  { quantity: 'power', unit: 'mW', scale: 0.001 },
  { quantity: 'power', unit: 'kW', scale: 1000 },
  { quantity: 'charge', unit: 'Ah', scale: 1 },
  { quantity: 'charge', unit: 'mAh', scale: 0.001 },
  { quantity: 'charge', unit: 'µAh', scale: 1e-6 },
  { quantity: 'energy', unit: 'Wh', scale: 1 },
  { quantity: 'energy', unit: 'mWh', scale: 0.001 },
  { quantity: 'energy', unit: 'kWh', scale: 1000 },
  { quantity: 'temperature', unit: '°C', scale: 1 },
  { quantity: 'temperature', unit: 'K', scale: 1, offset: -273.15 },
  { quantity: 'temperature', unit: '°F', scale: 5 / 9, offset: -160 / 9 },
];

/** Spellings, lower case, brackets and blanks gone. */
const SPELLINGS: Record<string, string> = {
  s: 's',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  sekunden: 's',
  ms: 'ms',
  msec: 'ms',
  millisecond: 'ms',
  milliseconds: 'ms',
  min: 'min',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  minuten: 'min',
  h: 'h',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  std: 'h',
  stunden: 'h',
  d: 'd',
  day: 'd',
  days: 'd',
  a: 'A',
  amp: 'A',
  amps: 'A',
  ampere: 'A',
  amperes: 'A',
  ma: 'mA',
  milliamp: 'mA',
  milliamps: 'mA',
  milliampere: 'mA',
  µa: 'µA',
  ua: 'µA',
  microampere: 'µA',
  v: 'V',
  volt: 'V',
  volts: 'V',
  mv: 'mV',
  millivolt: 'mV',
  millivolts: 'mV',
  w: 'W',
  watt: 'W',
  watts: 'W',
  mw: 'mW',
  kw: 'kW',
  ah: 'Ah',
  amphour: 'Ah',
  amphours: 'Ah',
  amperehour: 'Ah',
  amperehours: 'Ah',
  mah: 'mAh',
  milliamphours: 'mAh',
  µah: 'µAh',
  uah: 'µAh',
  wh: 'Wh',
  watthour: 'Wh',
  watthours: 'Wh',
  mwh: 'mWh',
  kwh: 'kWh',
  '°c': '°C',
  ºc: '°C',
  degc: '°C',
  celsius: '°C',
  c: '°C',
  grad: '°C',
  '℃': '°C',
  degreec: '°C',
  degreescelsius: '°C',
  k: 'K',
  kelvin: 'K',
  '°f': '°F',
  degf: '°F',
  fahrenheit: '°F',
}; // prettier-ignore

/** The unit a word spells, brackets round it or not; `null` where it spells none. */
export function unitOf(word: string): LogUnit | null {
  const bare = word
    .toLowerCase()
    .replace(/[\s[\](){}<>"._*·⋅-]/g, '')
    .replace('\u03bc', '\u00b5')
    // A degree sign lost to a wrong encoding still leaves its C.
    .replace(/^[\ufffd?]+c$/, '°c');
  const unit = Object.hasOwn(SPELLINGS, bare) ? SPELLINGS[bare] : undefined;
  return LOG_UNITS.find((one) => one.unit === unit) ?? null;
}
