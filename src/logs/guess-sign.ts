import type { LogMapping, OutIs, SignBecause } from './log-mapping.ts';
import { SLOT } from './log-rows.ts';
import { RowReader } from './row-reader.ts';
import { STATE } from './state-words.ts';

/** Our choice: a log of up to 4 MB is looked at whole, a longer one in 48 places of 64 kB. */
const WHOLE_BYTES = 4_000_000;
const PLACES = 48;
const PLACE_BYTES = 65_536;
/** Our choice: evidence that points one way by less than four to one is no evidence. */
const CLEAR_FRAC = 0.8;
/** Our choice: a row under 5 % of the largest current says nothing; a change by 20 % of it is a change of load. */
const LOADED_FRAC = 0.05;
const STEP_FRAC = 0.2;

/** For and against "positive is out", of one kind. */
interface Scale {
  out: number;
  in: number;
}

/**
 * Finds which sign of current means out of the pack, from the surest evidence there is: letters or words of state, then
 * charge counters, then what the voltage does where the load changes (more out, less voltage), then whether it falls
 * while current flows, then the column's name. The word says which.
 */
export function guessSign(bytes: Uint8Array, mapping: LogMapping): { outIs: OutIs; because: SignBecause } {
  if (!mapping.columns.some(({ quantity }) => quantity === 'current'))
    return { outIs: 'positive', because: 'noCurrent' };
  const evidence = gather(blocksOf(bytes, mapping));
  const { state, counters, steps, trend, negative } = evidence;
  const kinds: [Scale, SignBecause][] = [
    [state, 'stateColumn'],
    [counters, 'counters'],
    [steps, 'currentSteps'],
    [trend, 'voltageTrend'],
  ];
  for (const [scale, because] of kinds) {
    const total = scale.out + scale.in;
    if (total === 0) continue;
    if (scale.out >= CLEAR_FRAC * total) return { outIs: 'positive', because };
    if (scale.in >= CLEAR_FRAC * total) return { outIs: 'negative', because };
    // Both ways under one sign: the numbers are magnitudes.
    if (!negative)
      return {
        outIs: 'unsigned',
        because: because === 'stateColumn' || because === 'counters' ? because : 'risesAndFalls',
      };
  }
  const named = signOfName(mapping);
  if (named !== null) return { outIs: named, because: 'columnName' };
  return { outIs: negative ? 'negative' : 'positive', because: 'cannotTell' };
}

function gather(blocks: readonly RowReader[]) {
  const state: Scale = { out: 0, in: 0 };
  const counters: Scale = { out: 0, in: 0 };
  const steps: Scale = { out: 0, in: 0 };
  const trend: Scale = { out: 0, in: 0 };
  let peakA = 0;
  let mostNegativeA = 0;
  for (const { rows } of blocks) {
    const currentA = rows.series[SLOT.current];
    for (let at = 0; currentA && at < rows.count; at++) {
      const amperes = currentA[at] as number;
      if (Math.abs(amperes) > peakA) peakA = Math.abs(amperes);
      if (amperes < mostNegativeA) mostNegativeA = amperes;
    }
  }
  const loadedA = LOADED_FRAC * peakA;
  for (const { rows } of blocks) {
    const currentA = rows.series[SLOT.current];
    const voltageV = rows.series[SLOT.voltage];
    const outAh = rows.series[SLOT.counterOut];
    const inAh = rows.series[SLOT.counterIn];
    for (let at = 1; currentA && at < rows.count; at++) {
      const now = currentA[at] as number;
      const before = currentA[at - 1] as number;
      const loaded = Math.abs(now) >= loadedA && loadedA > 0;
      if (loaded && rows.state) {
        if (rows.state[at] === STATE.out) add(state, now > 0, 1);
        if (rows.state[at] === STATE.in) add(state, now < 0, 1);
      }
      if (loaded && now * before > 0) {
        if (outAh && (outAh[at] as number) > (outAh[at - 1] as number)) add(counters, now > 0, 1);
        if (inAh && (inAh[at] as number) > (inAh[at - 1] as number)) add(counters, now < 0, 1);
      }
      if (!voltageV) continue;
      const rise = (voltageV[at] as number) - (voltageV[at - 1] as number);
      if (!(Math.abs(rise) > 0)) continue;
      const change = now - before;
      if (Math.abs(change) >= STEP_FRAC * peakA) add(steps, rise * change < 0, Math.abs(change));
      else if (loaded && Math.abs(change) < 0.05 * Math.abs(now)) add(trend, rise * now < 0, Math.abs(rise));
    }
  }
  return { state, counters, steps, trend, negative: mostNegativeA < -loadedA };
}

function add(scale: Scale, out: boolean, weight: number): void {
  if (out) scale.out += weight;
  else scale.in += weight;
}

function signOfName({ layout, columns }: LogMapping): OutIs | null {
  const name = layout.columnNames[columns.findIndex(({ quantity }) => quantity === 'current')] ?? '';
  if (/dis-?charg|dchg|entlad|d[ée]charg/i.test(name)) return 'positive';
  return /charg|laden|lade/i.test(name) ? 'negative' : null;
}

/** Rows of the whole log, or of places all along it; `bytes` is one byte a character, from the start of the text. */
function blocksOf(bytes: Uint8Array, mapping: LogMapping): RowReader[] {
  if (bytes.length <= WHOLE_BYTES) {
    const whole = new RowReader(bytes, mapping);
    whole.read(Number.POSITIVE_INFINITY);
    return [whole];
  }
  const lineEnd = mapping.layout.lineEnd === 'lf' ? 10 : 13;
  const head = new RowReader(bytes.subarray(0, PLACE_BYTES), mapping);
  head.read(Number.POSITIVE_INFINITY);
  const blocks = [head];
  for (let place = 1; place < PLACES; place++) {
    const start = bytes.indexOf(lineEnd, Math.floor((bytes.length / PLACES) * place)) + 1;
    const end = bytes.lastIndexOf(lineEnd, Math.min(bytes.length, start + PLACE_BYTES) - 1) + 1;
    if (start === 0 || end <= start) continue;
    const block = new RowReader(bytes, mapping, { from: start, to: end, line: 1 });
    block.read(Number.POSITIVE_INFINITY);
    blocks.push(block);
  }
  return blocks;
}
