import { describe, expect, it } from 'vitest';
import {
  signIsOpen,
  timeIsCounted,
  turnedRound,
  unitsOf,
  withCounts,
  withQuantity,
  withSign,
  withTimeFormat,
  withUnit,
} from '../../../src/app/logs/changed-mapping.ts';
import { guessMapping } from '../../../src/logs/guess-mapping.ts';
import type { LogMapping } from '../../../src/logs/log-mapping.ts';

const HEAD = 'Time [s],I [A],U [V],U2 [V],disAh [Ah],chgAh [Ah]\n';
const rows = Array.from({ length: 30 }, (_, at) => `${at},${at < 5 ? 0 : 20},${13.4 - at / 100},12.9,${at / 200},0`);
const guessed = guessMapping(new TextEncoder().encode(HEAD + rows.join('\n')));
const quantities = ({ columns }: LogMapping) => columns.map(({ quantity, counts }) => counts ?? quantity);

describe('a mapping changed by hand', () => {
  it('begins as time, current, voltage, one column not used, and two counters', () => {
    expect(quantities(guessed)).toEqual(['time', 'current', 'voltage', 'ignored', 'out', 'in']);
  });

  it('gives the voltage to column 4 and takes it from column 3', () => {
    const changed = withQuantity(guessed, 3, 'voltage');
    expect(quantities(changed)).toEqual(['time', 'current', 'ignored', 'voltage', 'out', 'in']);
    expect(changed.columns[3]).toMatchObject({ unit: 'V', scale: 1, unitFrom: 'user' });
  });

  it('leaves two counters that count different things, and takes the third flow for a third one', () => {
    expect(quantities(withQuantity(guessed, 3, 'charge'))).toEqual(['time', 'current', 'voltage', 'net', 'out', 'in']);
    expect(quantities(withCounts(guessed, 4, 'in'))).toEqual([
      'time',
      'current',
      'voltage',
      'ignored',
      'in',
      'ignored',
    ]);
  });

  it('reads milliamperes as thousandths and keeps what a counter counts when its unit changes', () => {
    expect(withUnit(guessed, 1, 'mA').columns[1]).toMatchObject({ unit: 'mA', scale: 0.001, unitFrom: 'user' });
    expect(withUnit(guessed, 4, 'mAh').columns[4]).toMatchObject({ unit: 'mAh', scale: 0.001, counts: 'out' });
  });

  it('takes minutes for the time column and says a person said so; a clock has no unit to be wrong', () => {
    const inMinutes = withTimeFormat(guessed, 'minutes');
    expect(inMinutes.timeFormat).toBe('minutes');
    expect(inMinutes.columns[0]).toMatchObject({ quantity: 'time', unit: 'min', unitFrom: 'user' });
    expect([timeIsCounted(inMinutes), timeIsCounted(withTimeFormat(guessed, 'clock'))]).toEqual([true, false]);
  });

  it('turns the sign round and back, by a person’s word', () => {
    const once = turnedRound({ ...guessed, outIs: 'positive' });
    expect([once.outIs, once.signBecause, turnedRound(once).outIs]).toEqual(['negative', 'user', 'positive']);
    expect(turnedRound({ ...guessed, outIs: 'unsigned' }).outIs).toBe('positive');
  });

  it('asks for the sign anew when current, voltage, counters or state move, unless a person has set it', () => {
    expect(signIsOpen(guessed, withQuantity(guessed, 3, 'voltage'))).toBe(true);
    expect(signIsOpen(guessed, withQuantity(guessed, 3, 'temperature'))).toBe(false);
    expect(signIsOpen(guessed, withTimeFormat(guessed, 'minutes'))).toBe(false);
    const set = withSign(guessed, 'negative');
    expect(signIsOpen(set, withQuantity(set, 3, 'voltage'))).toBe(false);
  });

  it('offers 3 units of current, 3 ways to write a date, and none for a state', () => {
    expect(unitsOf('current')).toEqual(['A', 'mA', 'µA']);
    expect(unitsOf('date')).toEqual(['iso', 'dayFirst', 'monthFirst']);
    expect(unitsOf('state')).toEqual([]);
  });
});
