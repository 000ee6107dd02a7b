import { describe, expect, it } from 'vitest';
import { leadWithstandS } from '../../src/calc/lead-withstand.ts';
import { meltingTimeS } from '../../src/calc/melting-time.ts';
import fixture from '../fixtures/onderdonk-fusing.json' with { type: 'json' };

const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;

// Wikibooks AWG table, in kA, rounded loosely: its 1/0 is 15.5 for 15.45 and its AWG 1 is 12 for 12.24.
describe.each([
  [1, 'kA1s', 0.3],
  [0.032, 'kA32ms', 0.85],
] as const)('currents that melt a wire in %d s', (timeS, column, slackKa) => {
  it.each(fixture.rows.map((row) => [row.size, row[column], row.circularMils] as const))(
    'AWG %s: %d kA',
    (_size, kiloAmps, circularMils) => {
      const areaMm2 = circularMils * MM2_PER_CIRCULAR_MIL;
      const meltsInS = (kA: number) => meltingTimeS({ areaMm2, currentA: kA * 1000, startDegC: 25 });
      expect(meltsInS(kiloAmps + slackKa)).toBeLessThan(timeS);
      expect(meltsInS(kiloAmps - slackKa)).toBeGreaterThan(timeS);
    },
  );
});

// Closed form: A² log₁₀(1 + 1058/259)/(33 I²) with A = 16 510 circular mils.
it('melts AWG 8 (16 510 circular mils) in 0.0583 s at 10 kA from 25 °C', () => {
  const areaMm2 = 16_510 * MM2_PER_CIRCULAR_MIL;
  expect(meltingTimeS({ areaMm2, currentA: 10_000, startDegC: 25 })).toBeCloseTo(0.05834, 5);
});

it('never comes before the insulation is harmed', () => {
  for (const insulation of ['pvc', 'xlpe', 'epr', 'silicone'] as const) {
    const lead = { areaMm2: 10, currentA: 2000, startDegC: 30 };
    expect(meltingTimeS(lead)).toBeGreaterThan(leadWithstandS({ ...lead, insulation }).timeS);
  }
});

it.each([
  ['no area', { areaMm2: 0 }],
  ['no current', { currentA: 0 }],
  ['already molten', { startDegC: 1083 }],
  ['a start that is not a number', { startDegC: Number.NaN }],
  ['colder than any bench', { startDegC: -41 }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => meltingTimeS({ areaMm2: 10, currentA: 1000, startDegC: 25, ...bad })).toThrow(RangeError);
});
