import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overviewOf } from '../../src/logs/curve-of.ts';
import { previewOf } from '../../src/logs/preview-of.ts';
import { readBytes } from './read-text.ts';
import { asCsv, followed, syntheticDischarge } from './synthetic-lfp.ts';

/** Reads, cuts and draws; every row must be accounted for, and nothing may be thrown or be neither a number nor absent. */
function survives(bytes: Uint8Array): void {
  const { mapping, reading, runs } = readBytes(bytes);
  const { rowsRead, merged, rejected } = reading.counts;
  if (reading.refused === undefined) expect(reading.columns.timeS.length + merged + rejected).toBe(rowsRead);
  expect(reading.columns.timeS.every(Number.isFinite)).toBe(true);
  expect(reading.stretches.reduce((sum, { firstIndex, lastIndex }) => sum + lastIndex - firstIndex + 1, 0)).toBe(
    reading.columns.timeS.length,
  );
  for (const { chargeAh, energyWh, durationS } of runs) {
    for (const number of [chargeAh, energyWh, durationS]) expect(number === null || Number.isFinite(number)).toBe(true);
  }
  overviewOf(reading, 2000);
  previewOf(bytes, mapping.layout);
}

const good = new TextEncoder().encode(
  asCsv(followed(syntheticDischarge({ cells: 4, until: 0.2 }), Array(9).fill({ currentA: 0, voltageV: 13 }))),
);

describe('hostile logs', () => {
  it('survives any bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 3000 }), survives), { numRuns: 300 });
  });

  it('survives any text of figures, separators and line ends', () => {
    const text = fc.string({ unit: fc.constantFrom(...'0123456789.,;:\t -+eE"\n\r[~#TZ/A'), maxLength: 2000 });
    fc.assert(
      fc.property(text, (log) => survives(new TextEncoder().encode(log))),
      { numRuns: 500 },
    );
  });

  it('survives a good log with bytes overwritten, taken out and cut off', () => {
    const change = fc.record({ at: fc.nat(good.length - 1), byte: fc.nat(255) });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 40 }), fc.nat(good.length), (changes, length) => {
        const bytes = good.slice(0, length);
        for (const { at, byte } of changes) if (at < length) bytes[at] = byte;
        survives(bytes);
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    ['numbers past every double', 'Time [s],I [A],U [V]\n0,1,3\n1e999,1,3\n2,1e999,3\n3,1,-1e999\n4,1,3\n'],
    ['one row', 'Time [s],I [A],U [V]\n0,1,3\n'],
    ['a line of a megabyte', `Time [s],I [A],U [V]\n0,1,3\n1,1,${'9'.repeat(1_000_000)}\n2,1,3\n`],
    ['a quote that never closes', 'Time [s],I [A],U [V]\n0,1,3\n1,"1,3\n2,1,3\n'],
    ['no line end at all', 'x'.repeat(100_000)],
    [
      'time that always falls',
      `Time [s],U [V]\n${Array.from({ length: 50 }, (_, row) => `${50 - row},3.3`).join('\n')}`,
    ],
    ['all stamps equal', `Time [s],I [A],U [V]\n${'5,1,3.3\n'.repeat(50)}`],
    ['all currents 0', `Time [s],I [A],U [V]\n${Array.from({ length: 50 }, (_, row) => `${row},0,3.3`).join('\n')}`],
    [
      'negative voltages',
      `Time [s],I [A],U [V]\n${Array.from({ length: 50 }, (_, row) => `${row},5,${-row}`).join('\n')}`,
    ],
  ])('survives %s', (_, text) => {
    survives(new TextEncoder().encode(text));
  });
});
