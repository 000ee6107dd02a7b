import { describe, expect, it } from 'vitest';
import definition from '../../checklists/lfp-drop-in/1.1.1.json' with { type: 'json' };
import type { ItemResult } from '../../src/grading/grading.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Item } from '../../src/schema/checklist.ts';
import { foundWithReadings } from '../../src/sheet/model/measured-words.ts';

const itemOf = (id: string) => (definition.items as unknown as Item[]).find((item) => item.id === id) as Item;
const readings = (values: Record<string, number>): Answer => ({ kind: 'readings', values, evidence: 'measured' });
const measuredAs = (value: number): ItemResult['measured'] => ({
  possible: ['passable'],
  found: { alternatives: [[{ case: 'any', figure: { low: value, high: value } }]] },
  overrules: null,
});
const said = (id: string, value: number, answer: Answer | undefined) =>
  foundWithReadings(itemOf(id), measuredAs(value), answer)?.replaceAll('\u00a0', ' ');

describe('a figure that is worked out of readings', () => {
  it('is printed with them: 2.5 °C of 24 °C and 21.5 °C', () => {
    expect(said('sensor-reading', 2.5, readings({ bms: 24, thermometer: 21.5 }))).toBe(
      '2.5 °C (the BMS shows 24 °C, the thermometer shows 21.5 °C)',
    );
  });

  it('names a count without a unit: 4 cells of 280 Ah', () => {
    expect(said('energy-claim', 7.1, readings({ cell: 280, count: 4 }))).toBe(
      '7.1 % (printed on one cell 280 Ah, cells in the pack 4)',
    );
  });

  it('stands alone where it is the reading itself, 7.4 mm, or nothing was typed', () => {
    expect(said('vent-headroom', 7.4, readings({ gap: 7.4 }))).toBe('7.4 mm');
    expect(said('sensor-reading', 2.5, undefined)).toBe('2.5 °C');
  });
});
