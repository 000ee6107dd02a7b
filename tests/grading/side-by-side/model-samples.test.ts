import { describe, expect, it } from 'vitest';
import { sideBySide } from '../../../src/grading/side-by-side/compare.ts';
import type { Compared } from '../../../src/grading/side-by-side/side-by-side.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { definitionWith, smallDefinition } from '../small-definition.ts';
import { smallPack } from './compared-pack.ts';

const modelSamples = (packs: readonly Compared[]) => sideBySide(packs).models;

const named = (
  packId: string,
  nameplate: Nameplate,
  ofPackId?: string,
  kind: 'sample' | 'productRevision' = 'sample',
) => smallPack(packId, {}, { nameplate, retestOf: ofPackId === undefined ? null : { packId: ofPackId, kind } });
const idsOf = (...packs: ReturnType<typeof named>[]) => modelSamples(packs).map(({ packIds }) => packIds);

describe('samples of one model', () => {
  it('are those of one maker and model, whatever the case and the space: 2 of Wren 24, 1 of Wren 48', () => {
    const packs = [
      named('a', { maker: 'Tarn Cells', model: 'Wren 24', name: 'mine' }),
      named('b', { maker: 'Tarn Cells', model: 'Wren 48' }),
      named('c', { maker: ' TARN  cells ', model: 'wren 24 ', name: 'other' }),
    ];
    expect(modelSamples(packs).map(({ name, packIds }) => [name, packIds])).toEqual([
      ['Tarn Cells Wren 24', ['a', 'c']],
      ['Tarn Cells Wren 48', ['b']],
    ]);
  });

  it('go by the name where maker or model is not said; without any, each stands alone', () => {
    expect(idsOf(named('a', { name: 'Wren 24' }), named('b', { name: 'wren 24', model: 'x' }))).toEqual([['a', 'b']]);
    expect(idsOf(named('a', {}), named('b', {}), named('c', { name: ' ' }))).toEqual([['a'], ['b'], ['c']]);
    expect(idsOf(named('a', { maker: 'Tarn', model: 'x' }), named('b', { maker: 'Beck', model: 'x' }))).toEqual([
      ['a'],
      ['b'],
    ]);
  });

  it('are those begun as another sample, not those of a revised product', () => {
    expect(idsOf(named('a', { name: 'x' }), named('b', { name: 'y' }, 'a'))).toEqual([['a', 'b']]);
    expect(idsOf(named('b', { name: 'y' }, 'a'), named('a', { name: 'x' }))).toEqual([['b', 'a']]);
    expect(idsOf(named('a', { name: 'x' }), named('b', { name: 'y' }, 'a', 'productRevision'))).toEqual([['a'], ['b']]);
  });

  it('are joined by a pack that belongs to both, in the order given', () => {
    const packs = [
      named('a', { name: 'x' }),
      named('b', { name: 'z' }),
      named('c', { name: 'y' }),
      named('d', { name: 'y' }, 'a'),
    ];
    expect(idsOf(...packs)).toEqual([['a', 'c', 'd'], ['b']]);
    expect(idsOf(named('a', { name: 'x' }), named('c', { name: 'y' }), named('d', { name: 'y' }, 'a'))).toEqual([
      ['a', 'c', 'd'],
    ]);
  });
});

describe('the spread', () => {
  const nameplate: Nameplate = { name: 'Wren 24' };
  const spread = (...packs: ReturnType<typeof smallPack>[]) => modelSamples(packs)[0]?.spread;
  const fine = smallPack('fine', {}, { nameplate });

  // 91.140625: see compare.test.ts. An open sensor costs credit 2/8 of 25 and, failed, is serious: 93.75·0.7 = 65.625.
  it('is from the lowest low to the highest high of their own scores: 65.625 to 100 and 91.140625 to 100', () => {
    expect(spread(fine, smallPack('weak', { sensor: 'weak' }, { nameplate }))).toEqual({
      low: expect.closeTo(91.140625, 9),
      high: 100,
    });
    const open = smallPack('open', { sensor: null }, { nameplate });
    expect(spread(open, smallPack('weak', { sensor: 'weak' }, { nameplate }))).toEqual({
      low: expect.closeTo(65.625, 9),
      high: 100,
    });
  });

  it('is none with fewer than two scores; those without one are counted: 2 of 2, then 1 of 2', () => {
    const damaged = (packId: string) => smallPack(packId, { swollen: 'failed' }, { nameplate });
    const of = (...packs: Compared[]) => modelSamples(packs)[0];
    expect(of(fine)).toMatchObject({ spread: null, unscoredCount: 0 });
    expect(of(damaged('a'), damaged('b'))).toMatchObject({ spread: null, unscoredCount: 2, isOneGroup: true });
    expect(of(damaged('a'), fine)).toMatchObject({ spread: null, unscoredCount: 1, isOneGroup: true });
    expect(of(damaged('a'), fine, smallPack('same', {}, { nameplate }))).toMatchObject({
      spread: { low: 100, high: 100 },
      unscoredCount: 1,
    });
  });

  it('is none over a short and a whole route, nor over 1.0.0 and 2.0.0: 2 groups', () => {
    const short = smallPack('short', {}, { nameplate, route: 'short' });
    const second = smallPack('second', {}, { nameplate, definition: definitionWith({ version: '2.0.0' }) });
    for (const other of [short, second]) {
      expect(modelSamples([fine, other])[0]).toMatchObject({ spread: null, unscoredCount: 0, isOneGroup: false });
    }
  });

  it('is over the common items: tidy, failed and no longer asked by 1.1.0, takes nothing off the 100 of both', () => {
    const untidy = smallPack('untidy', { tidy: 'failed' }, { nameplate });
    const noTidy = definitionWith({ version: '1.1.0', items: smallDefinition.items.filter(({ id }) => id !== 'tidy') });
    expect(untidy.grading.score?.low).toBeLessThan(100);
    expect(spread(untidy, smallPack('later', {}, { nameplate, definition: noTidy }))).toEqual({ low: 100, high: 100 });
  });
});
