import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { builtIn } from './built-in.ts';
import { definitionFiles } from './definition-files.ts';
import { minorFaults } from './minor-faults.ts';

const first = admitted('lfp-drop-in/1.0.0');

describe('lfp-drop-in 1.1.0', () => {
  it('takes over all 79 items of 1.0.0 with their sentences, weights and hazards, and adds 6', () => {
    expect(minorFaults(first, builtIn)).toEqual([]);
    expect([first.items.length, builtIn.items.length]).toEqual([79, 85]);
  });

  it('turns 15 looks into readings: 4 measured, 11 derived; the 6 added are derived', () => {
    const kinds = builtIn.items.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'measure')).toHaveLength(4);
    expect(kinds.filter((kind) => kind === 'derive')).toHaveLength(17);
    const added = builtIn.items.filter(({ id }) => !first.items.some((item) => item.id === id));
    expect(added.map(({ kind }) => kind)).toEqual(Array(6).fill('derive'));
  });
});

describe('a minor version', () => {
  const [item] = builtIn.items;
  if (item === undefined) throw new Error('the checklist has items');
  const withFirst = (change: Partial<typeof item>): Checklist => ({
    ...builtIn,
    items: [{ ...item, ...change }, ...builtIn.items.slice(1)],
  });

  it.each([
    ['an item less', { ...builtIn, items: builtIn.items.slice(1) }, 'case-damage is gone'],
    ['another weight', withFirst({ weight: 1 }), 'case-damage has another weight'],
    [
      'another sentence',
      withFirst({ grades: { sound: 'Fine.', failed: 'Broken.' } }),
      'case-damage has another grades',
    ],
    ['another question', withFirst({ ask: 'Is it fine?' }), 'case-damage has another ask'],
    [
      'a remedy that became the owner’s',
      {
        ...builtIn,
        remedies: builtIn.remedies.map((one) =>
          one.id === 'replace-bms' ? { ...one, reach: 'outside' as const } : one,
        ),
      },
      'remedy replace-bms is gone or another',
    ],
    [
      'a hazard less',
      { ...builtIn, hazards: builtIn.hazards.slice(1) },
      `hazard ${builtIn.hazards[0]?.id} is gone or another`,
    ],
    ['a fact less', { ...builtIn, facts: builtIn.facts.slice(1) }, `fact ${builtIn.facts[0]?.id} is gone or another`],
    ['another k', { ...builtIn, k: { ...builtIn.k, high: 0.5 } }, 'the factors or credits changed'],
  ])('is refused for %s', (_, after, fault) => {
    expect(minorFaults(builtIn, after)).toEqual([fault]);
  });

  it('is refused for other bands of an item that had some', () => {
    const items = builtIn.items.map((one) =>
      one.id === 'cell-spread' && one.derive !== undefined
        ? { ...one, derive: { ...one.derive, bands: { ...one.derive.bands, rested: [{ grade: 'failed' as const }] } } }
        : one,
    );
    expect(minorFaults(builtIn, { ...builtIn, items })).toEqual(['cell-spread is read by another derive']);
  });

  it('is refused for a measured item that turned into a look', () => {
    const items = builtIn.items.map((one) => (one.id === 'vent-headroom' ? { ...one, kind: 'look' as const } : one));
    expect(minorFaults(builtIn, { ...builtIn, items })).toEqual(['vent-headroom turned from measure to look']);
  });
});

function admitted(name: string): Checklist {
  const file = definitionFiles().find((one) => one.name === name);
  const verdict = checkDefinition(JSON.parse(file?.text ?? 'null'));
  if (!verdict.ok) throw new Error(`${name} is refused: ${JSON.stringify(verdict.problems)}`);
  return verdict.definition;
}
