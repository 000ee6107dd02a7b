import type { CounterFlow, LogQuantity } from './log-mapping.ts';
import { type LogUnit, unitOf } from './unit-words.ts';

/** What a column's name (and its cell in a units row) says. The higher `rank`, the surer; at 0 or less it says nothing. */
export interface NamedColumn {
  quantity: LogQuantity;
  unit: LogUnit | null;
  unitFrom: 'name' | 'unitsRow' | null;
  counts: CounterFlow | null;
  rank: number;
}

/** Words of names, lower case, in the languages exports come in; the Battery Data Format's labels are among them. */
const WORDS: [LogQuantity, RegExp][] = [
  [
    'time',
    /^(time|timestamp|zeit|zeitpunkt|datetime|elapsed|runtime|tijd|temps|tiempo|tempo|t|unix|epoch|clock|uhrzeit)$/,
  ],
  ['date', /^(date|datum|fecha|data|day|tag)$/],
  [
    'current',
    /^(current|amp|amps|ampere|amperes|strom|stromstärke|courant|corriente|corrente|stroom|i|ibat|ibatt|ipack)$/,
  ],
  [
    'voltage',
    /^(voltage|volt|volts|spannung|tension|voltaje|tensione|spanning|potential|u|v|ewe|ecell|vbat|vbatt|vpack|ubat|upack|vcell)$/,
  ],
  ['power', /^(power|watt|watts|leistung|puissance|potencia|potenza|p)$/],
  ['charge', /^(capacity|cap|kapazität|kapazitaet|ladung|capacité|capacidad|q|ah|mah|coulombs?|ladungsmenge)$/],
  ['energy', /^(energy|energie|énergie|energía|energia|wh|mwh|kwh)$/],
  [
    'temperature',
    /^(temperature|temp|temps?\d+|temperatur|température|temperatura|tcell|tpack|ntc\d*|t\d+|thermocouple|surface)$/,
  ],
  ['step', /^(step|steps|schritt|cycle|cycles|zyklus|ns|halfcycle|loop|segment|stufe|paso|étape|cyc)$/],
  ['state', /^(state|status|mode|md|zustand|zust|es|phase)$/],
]; // prettier-ignore
const TIME_WORD = WORDS[0]?.[1] ?? /^time$/;
const OUT = /^(dis\w*|dchg|dch|entlad\w*|décharge|descarga|scarica|out|delivered|consumed|used)$/;
const IN = /^(charg(e|ing|ed)|chg|cha|laden|geladen|carga|carica|in)$/;
/** Worked out from other columns, or something else in the same unit. */
const DERIVED =
  /d[vqieu]\s*\/\s*d|resist|imped|ohm|\bacr\b|std|dev\b|set ?point|target|limit|cut ?off|\bmax|\bmin\b(?!\w)|\bavg|average|mean|delta|diff|ripple|rate|efficien|ewe ?- ?ece|counter|control|\bcmd|ref\b|\bece\b|real\b/i;
const AROUND = /ambient|\bair\b|room|chamber|oven|board|mos(fet)?|\bfet|bms|umgebung/i;

export function namedColumn(name: string, unitCell: string): NamedColumn | null {
  const { words, unit: nameUnit } = wordsOf(name);
  const rowUnit = unitCell === '' ? null : unitOf(unitCell);
  const unit = rowUnit ?? nameUnit;
  const quantity = quantityOf(words, unit);
  if (quantity === null) return null;
  const fits = unit !== null && unit.quantity === quantity;
  const out = words.some((word) => OUT.test(word));
  const charging = words.some((word) => IN.test(word));
  const counter = quantity === 'charge' || quantity === 'energy';
  return {
    quantity,
    unit: fits ? unit : null,
    unitFrom: !fits ? null : rowUnit !== null ? 'unitsRow' : 'name',
    counts: counter ? (out ? 'out' : charging ? 'in' : 'net') : null,
    rank: 4 + (fits ? 1 : 0) - demerits(name, words, quantity),
  };
}

/** What makes one of several columns of a quantity the lesser choice. */
function demerits(name: string, words: readonly string[], quantity: LogQuantity): number {
  const has = (...wanted: string[]) => wanted.some((word) => words.includes(word));
  let less = DERIVED.test(name) ? 3 : 0;
  if (quantity === 'time' && has('step', 'cycle', 'half', 'schritt')) less += 3;
  if (quantity === 'time' && !words.some((word) => TIME_WORD.test(word))) less += 2;
  if (quantity === 'time' && has('unix', 'epoch', 'system', 'absolute', 'date', 'datum')) less += 1;
  if (quantity === 'temperature' && AROUND.test(name)) less += 1;
  if (quantity === 'voltage' && words.some((word) => /^(cell|zelle|c)\d*$/.test(word))) less += 1;
  if ((quantity === 'charge' || quantity === 'energy') && has('step', 'specific', 'areal')) less += 1;
  return less;
}

function quantityOf(words: readonly string[], unit: LogUnit | null): LogQuantity | null {
  const said = WORDS.filter(([, pattern]) => words.some((word) => pattern.test(word))).map(([quantity]) => quantity);
  if (unit !== null && unit.quantity !== 'time') return unit.quantity;
  if (said.includes('time')) return 'time';
  return said.find((quantity) => quantity !== 'time') ?? unit?.quantity ?? null;
}

/** Words of a name and the unit it ends in: `disAh`, `I[A]`, `Capacity/mA.h`, `test_time_second`, `Test Time / s`. */
function wordsOf(name: string): { words: string[]; unit: LogUnit | null } {
  const plain = name.normalize('NFC').replace(/([µmk]?[AW])[.·*⋅ -]h\b/g, '$1h');
  const bracket = /[[({]([^\])}]*)[\])}]?\s*$/.exec(plain) ?? /[/,]\s*([^/,]+)$/.exec(plain);
  const bracketUnit = bracket === null ? null : unitOf(bracket[1] ?? '');
  const rest = bracket !== null && bracketUnit !== null ? plain.slice(0, bracket.index) : plain;
  const words = rest
    .split(/[^\p{L}\p{N}°µ]+/u)
    .filter((word) => word !== '')
    .flatMap((word) => (unitOf(word) === null ? word.split(/(?<=\p{Ll}{2})(?=\p{Lu})/u) : [word]))
    .map((word) => word.toLowerCase());
  // A capital T alone is a temperature; t is time.
  const spelt = words.map((word) => (word === 't' && /^\W*T\b/.test(plain) ? 't1' : word));
  const last = words.at(-1) ?? '';
  // "Group C", "cycle k", "part d": one letter behind other words is no unit, save those of the columns sought.
  const unitWord = words.length > 1 && /^[ckd]$/.test(last) ? '' : last;
  return { words: spelt, unit: bracketUnit ?? unitOf(unitWord) };
}
