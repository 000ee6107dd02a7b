import { describe, expect, it } from 'vitest';
import { foundRunLines, foundRunTitle, kindNotes } from '../../../src/app/logs/found-run-words.ts';
import type { LogRun } from '../../../src/logs/log-run.ts';
import { foundWords as say } from '../../../src/text/logs/found.ts';
import { madeRunLog } from '../../browser/driver/made-run-log.ts';
import { readText } from '../../logs/read-text.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const { runs } = readText(madeRunLog(), (mapping) => ({ ...mapping, timeFormat: 'minutes' }));
const run = runs[0] as LogRun;
const lines = (changed: Partial<LogRun> = {}) => foundRunLines([{ ...run, ...changed }], 0, 'metric').map(plain);

describe('a found run in words', () => {
  it('is a discharge of 100 Ah in 5 h at 20 A that ended empty, on lines 47 to 347', () => {
    expect(plain(foundRunTitle(run))).toMatch(/^Discharge · 100 Ah · 129\d Wh · 5 h · 20 A$/);
    expect(lines()).toEqual([
      say.ends.lowVoltage,
      say.restAtLeast('40 min'),
      '21.4 °C at the start, 24.5 °C at the end.',
      'Lines 47 to 347.',
    ]);
  });

  it('says that a counter 3 % off is far off, and leaves one 1 % off alone', () => {
    expect(lines({ counterChargeAh: 103 })).toContain(
      `The log’s own counter says 103 Ah, +3.00 % against the sum over the rows. ${say.counterOff}`,
    );
    expect(lines({ counterChargeAh: 99 })).toContain(
      'The log’s own counter says 99 Ah, −1.00 % against the sum over the rows.',
    );
  });

  it('says once of charges why they are not kept, of holds why they stand alone, of voltages that there is no Ah', () => {
    const charge: LogRun = { ...run, kind: 'charge', flow: 'in', end: 'stopped' };
    const hold: LogRun = { ...run, kind: 'hold', end: 'taper' };
    expect(kindNotes([charge, run, charge, hold])).toEqual([say.chargeNote, say.holdNote]);
    expect(kindNotes([{ ...run, kind: 'voltageOnly', flow: null }])).toEqual([say.voltageOnlyNote]);
    expect(kindNotes([run])).toEqual([]);
  });

  it('says 40 min after a charge that ended at 14.4 V, and right after it where that was 59 s before', () => {
    const afterCharge = (restS: number) => {
      const charge: LogRun = { ...run, kind: 'charge', flow: 'in', endVoltageV: 14.4, endS: run.startS - restS };
      return plain(foundRunLines([charge, { ...run, restBeforeS: restS }], 1, 'metric')[1] ?? '');
    };
    expect(afterCharge(2400)).toBe('40 min after a charge that ended at 14.4 V.');
    expect(afterCharge(59)).toBe('Right after a charge that ended at 14.4 V.');
  });

  it('counts 2 gaps and names the longest', () => {
    const gap = (lengthS: number) => ({ index: 0, fromS: 0, toS: lengthS, lengthS });
    expect(lines({ gaps: [gap(90), gap(600)] })).toContain('2 gaps in time, the longest 10 min; bridged straight.');
  });
});
