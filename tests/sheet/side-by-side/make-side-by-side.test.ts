import { describe, expect, it } from 'vitest';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import type { GridBlock, Sheet } from '../../../src/sheet/model/sheet.ts';
import { gridRow } from '../../../src/sheet/model/side-by-side/grid-rows.ts';
import { makeSideBySide } from '../../../src/sheet/model/side-by-side/make-side-by-side.ts';
import { onlyDiffering } from '../../../src/sheet/model/side-by-side/only-differing.ts';
import { HUT_CHECKLIST, hutRecord } from '../hut-pack.ts';
import { fullRun } from '../live-tests/bench-tests.ts';
import { plain, plots, said } from '../live-tests/texts-of.ts';
import { compared, comparisonOf } from './hut-comparison.ts';

const A = 'a'.repeat(32);
const B = 'b'.repeat(32);
const C = 'c'.repeat(32);

const sound = { kind: 'grade', grade: 'sound', evidence: 'seen' } as const;
const ALL_SOUND: PackRecord['answers'] = Object.fromEntries(
  HUT_CHECKLIST.items.filter(({ id }) => id !== 'metal-floor').map(({ id }) => [id, sound]),
);
const WREN = hutRecord().nameplate;
const run = (chargeAh: number, energyWh: number) => ({
  ...NO_LIVE_TESTS,
  runs: [fullRun(1, { chargedToV: 28.8, chargeAh, energyWh, currentA: 20 })],
});

const wren = compared({
  packId: A,
  nameplate: { ...WREN, chargeVoltageV: 28.8 },
  tests: run(90, 2000),
  remedyNotes: { 'new-lug': { price: 60 } } as unknown as PackRecord['remedyNotes'],
});
const tarn = compared({
  packId: B,
  demo: false,
  nameplate: { ...WREN, name: 'Tarn 24', sample: '7', chargeVoltageV: 28.8, price: 500, massKg: 25 },
  answers: ALL_SOUND,
  tests: run(98, 2500),
});

function gridOf({ sections }: Sheet): GridBlock {
  const found = sections.flatMap(({ blocks }) => blocks).find((block) => block.kind === 'grid');
  if (found === undefined) throw new Error('there is no grid');
  return found;
}
/** "Rank: 1 of 2 | 2 of 2 (note)". */
function linesOf(sheet: Sheet): string[] {
  return gridOf(sheet).rows.map(({ label, cells }) =>
    plain(`${label}: ${cells.map(({ text, note }) => (note === null ? text : `${text} (${note})`)).join(' | ')}`),
  );
}
function textsOf(sheet: Sheet, id: string): string[] {
  return said(sheet.sections.find((section) => section.id === id)?.blocks ?? []);
}

describe('two packs of the hut, worked out by hand', () => {
  const sheet = makeSideBySide(
    comparisonOf([wren, tarn], {
      protections: [
        [{ kind: 'overCurrent', state: 'doesNot', trialCount: 2, heatOnlyCount: 2, sides: null }],
        [
          { kind: 'overCurrent', state: 'acts', trialCount: 1, heatOnlyCount: 0, sides: null },
          { kind: 'highTemperature', state: 'acts', trialCount: 1, heatOnlyCount: 0, sides: 'load' },
        ],
      ],
    }),
  );

  it('puts the better verdict first and marks the invented pack', () => {
    expect(gridOf(sheet).columns).toEqual([
      { title: 'Tarn 24', mark: 'sample 7' },
      { title: 'Wren 24', mark: 'sample 1 · invented demo' },
    ]);
    expect(sheet.demoMark).toBe('partly invented demo');
  });

  // Wren: Build 36.2–48.8 as in tests/sheet/make-sheet.test.ts, × 0.4 for one high hazard.
  // Cost: 640 ÷ 2.0 kWh = 320, 500 ÷ 2.5 kWh = 200; after all work (640 + 60) ÷ 2.0 = 350, the label unpriced.
  // Wh/kg: 2000 ÷ 24 = 83.3, 2500 ÷ 25 = 100. Promised energy 25.6 V × 100 Ah = 2560 Wh.
  it('has these 33 lines, to the letter', () => {
    expect(linesOf(sheet)).toEqual([
      'Rank: 1 of 2 | 2 of 2',
      'Verdict: No finding on this sample | Workshop first',
      'Score, of 100: 100.0 | 14.5–19.5',
      'Build, of 100: 100.0 | 36.2–48.8',
      'Factor: × 1.00 | × 0.40',
      'Enclosure: 100 (worst: sound) | 17–68 (worst: weak)',
      'Wiring: 100 (worst: sound) | 20 (worst: failed)',
      'Vents: 100 (worst: sound) | 88 (worst: passable)',
      'I catastrophic: 0 | 0',
      'II critical: 0 | 1',
      'III marginal: 0 | 0',
      'IV negligible: 0 | 0',
      'No hazard: 0 | 1 (one item still open)',
      'Capacity delivered: 98 Ah (98.0 % of 100 Ah promised) | 90 Ah (90.0 % of 100 Ah promised)',
      'Energy delivered: 2500 Wh (97.7 % of 2560 Wh promised; promise from Ah × V) | 2000 Wh (78.1 % of 2560 Wh promised; promise from Ah × V)',
      'Left at the hardest rate: – (not measured) | – (not measured)',
      'Mass: 25 kg (weighed) | 24 kg (weighed)',
      'Delivered per mass: 100 Wh/kg | 83 Wh/kg',
      'Price: EUR 500.00 (on 1 October 2026) | EUR 640.00 (on 1 October 2026)',
      'Per delivered kWh, as found: EUR 200.00 | EUR 320.00',
      'Per delivered kWh, after outside work: EUR 200.00 (no outside remedy listed) | – (remedies not priced)',
      'Per delivered kWh, after all work: EUR 200.00 (no remedy listed) | at least EUR 350.00 (one remedy has no price)',
      'Over-current: acts (one trial) | does not act (2 trials; only heat ended them)',
      'Short circuit: not tested | not tested',
      'Charging in the cold: not tested | not tested',
      'Heat: acts (load only; one trial) | not tested',
      'Low voltage: not tested | not tested',
      'High voltage: not tested | not tested',
      'Route: Whole route (7 of 7 asked) | Whole route (7 of 7 asked)',
      'Checklist: hut 0.3.0 | hut 0.3.0',
      'Settled: 7 of 7 | 6 of 7',
      'Sheet: Not closed | Not closed',
      'Sample: Bought from a shop (No link of the tester’s pays a commission.) | Bought from a shop (No link of the tester’s pays a commission.)',
    ]);
  });

  it('says in its head, and at the head of every page, that 8 lines are left out; with none left out it says nothing', () => {
    const { paper } = onlyDiffering(sheet);
    expect(paper.head.line).toBe(
      '2 packs. Only what differs, and all protections: 8 lines, alike in all packs, are left out.',
    );
    expect(paper.standingMark).toBe('2 packs, only what differs');
    expect(onlyDiffering(paper).paper).toBe(paper);
  });

  it('keeps the 19 other lines in which they differ and all 6 of the protections, and hides 8', () => {
    const { paper, hiddenCount } = onlyDiffering(sheet);
    expect(hiddenCount).toBe(8);
    expect(gridOf(paper).rows.map(({ label }) => label)).toEqual([
      'Rank',
      'Verdict',
      'Score, of 100',
      'Build, of 100',
      'Factor',
      'Enclosure',
      'Wiring',
      'Vents',
      'II critical',
      'No hazard',
      'Capacity delivered',
      'Energy delivered',
      'Mass',
      'Delivered per mass',
      'Price',
      'Per delivered kWh, as found',
      'Per delivered kWh, after outside work',
      'Per delivered kWh, after all work',
      'Over-current',
      'Short circuit',
      'Charging in the cold',
      'Heat',
      'Low voltage',
      'High voltage',
      'Settled',
    ]);
  });

  it('shows each zone’s worst grade by its lid: sound, then failed for the wiring', () => {
    const wiring = gridOf(sheet).rows.find(({ label }) => label === 'Wiring');
    expect(wiring?.cells.map(({ glyph }) => glyph)).toEqual(['sound', 'failed']);
  });

  it('says that Tarn leads in every weighting, for its verdict is better', () => {
    expect(textsOf(sheet, 'firmness')).toEqual(
      expect.arrayContaining([
        'Tarn 24 leads in every weighting.',
        'Wren 24 leads in no weighting.',
        'The whole order stands as it does here in every weighting.',
      ]),
    );
  });

  it('says what it rests on and that one sample says nothing of the next', () => {
    expect(textsOf(sheet, 'basis')).toEqual(
      expect.arrayContaining(['Tarn 24 and Wren 24: hut 0.3.0, whole route, 7 items that both were asked.']),
    );
    expect(textsOf(sheet, 'basis').join(' ')).toContain('how far further samples differ is not known');
  });

  it('says of every pack how its sample was obtained', () => {
    expect(textsOf(sheet, 'disclosure')).toEqual(
      expect.arrayContaining([
        'Tarn 24',
        'Sample bought from a shop. No link of the tester’s pays a commission.',
        'Wren 24',
        'Invented demo: no such pack exists. Sample bought from a shop. No link of the tester’s pays a commission.',
      ]),
    );
  });

  it('draws score over cost with both packs, and the zones in words', () => {
    const drawn = plots(sheet.sections.find(({ id }) => id === 'plots')?.blocks ?? []);
    expect(drawn.map(({ drawing }) => plain(drawing.alt))).toEqual([
      'Score against cost per delivered kWh. Tarn 24: score 100.0, EUR 200.00 per kWh; Wren 24: score 14.5–19.5, EUR 320.00 per kWh.',
      'Zones of each pack, 0 to 100. Tarn 24: Enclosure 100, Wiring 100, Vents 100; Wren 24: Enclosure 17–68, Wiring 20, Vents 88.',
    ]);
  });

  it('says of each run of draws how many of 100: 1 of 200 is 1, 199 of 200 is 99', () => {
    const input = comparisonOf([wren, tarn]);
    const [drawn] = input.firmness;
    if (drawn === null || drawn === undefined) throw new Error('nothing was drawn');
    const count = (leads: number[]) =>
      makeSideBySide({ ...input, firmness: [{ ...drawn, leads, noneLeads: 0, orderHolds: 186 }] });
    const place = drawn.packIds.indexOf(B);
    const lines = textsOf(count(place === 0 ? [199, 1] : [1, 199]), 'firmness');
    expect(lines).toContain('Tarn 24 leads in 99 of 100 weightings.');
    expect(lines).toContain('Wren 24 leads in 1 of 100 weightings.');
    expect(lines).toContain('The whole order stands as it does here in 93 of 100 weightings.');
  });
});

describe('packs that cannot be set against one another', () => {
  it('never ranks a short route with a whole one, and says so', () => {
    const short = compared({ packId: C, route: 'short', nameplate: { ...WREN, name: 'Fell' } });
    expect(textsOf(makeSideBySide(comparisonOf([tarn, wren, short])), 'firmness')).toContain(
      'Not part of this order: Fell (on the short route, never ranked with these).',
    );
    const sheet = makeSideBySide(comparisonOf([tarn, short]));
    expect(linesOf(sheet)[0]).toBe('Rank: – (nothing to rank against) | – (nothing to rank against)');
    expect(textsOf(sheet, 'basis').join(' ')).toContain('Packs asked on different routes');
    expect(textsOf(sheet, 'firmness')).toContain(
      'Fewer than two packs can be ranked against one another: there is no order to weigh.',
    );
  });

  it('withholds the score of a pack with a stop sign and does not rank it', () => {
    const failed = { kind: 'grade', grade: 'failed', evidence: 'seen' } as const;
    const stop = compared({
      packId: C,
      nameplate: { ...WREN, name: 'Fell' },
      answers: { ...ALL_SOUND, swollen: failed },
    });
    const ranked = makeSideBySide(comparisonOf([stop, tarn, wren]));
    expect(textsOf(ranked, 'firmness')).toContain('Not part of this order: Fell (not ranked: a stop sign was found).');
    const lines = linesOf(makeSideBySide(comparisonOf([stop, tarn])));
    expect(lines.slice(0, 5)).toEqual([
      'Rank: – (nothing to rank against) | – (not ranked: a stop sign was found)',
      'Verdict: No finding on this sample | Stop: treat as damaged',
      'Score, of 100: 100.0 | withheld',
      'Build, of 100: 100.0 | withheld',
      'Factor: × 1.00 | withheld',
    ]);
  });

  it('never compares EUR with USD: it says so, and each has a plot of its own', () => {
    const abroad = compared({
      packId: C,
      nameplate: { ...WREN, name: 'Fell', chargeVoltageV: 28.8, currency: 'USD' },
      answers: ALL_SOUND,
      tests: run(98, 2500),
    });
    const sheet = makeSideBySide(comparisonOf([tarn, abroad]));
    expect(textsOf(sheet, 'basis')).toContain(
      'Prices stand in EUR and USD: amounts in different currencies are not compared.',
    );
    const alts = plots(sheet.sections.find(({ id }) => id === 'plots')?.blocks ?? []).map(({ drawing }) => drawing.alt);
    expect(alts.filter((alt) => alt.startsWith('Score against cost')).map(plain)).toEqual([
      'Score against cost per delivered kWh. Tarn 24: score 100.0, EUR 200.00 per kWh.',
      'Score against cost per delivered kWh. Fell: score 100.0, USD 256.00 per kWh.',
    ]);
  });
});

it('says of a closed sheet that is not here that its record is not what was sealed', () => {
  const sha256 = 'f'.repeat(64);
  const closing = { sha256, revision: 1, closedAtMs: 0, appVersion: '0.1.0', byteCount: 1, entriesSha256: sha256 };
  const verdict = { low: 'noFinding', high: 'noFinding' } as const;
  const closed = compared({
    packId: C,
    answers: ALL_SOUND,
    closings: [{ ...closing, score: null, verdict, settled: true }],
    sheet: { now: 'closed', sha256, revision: 1 },
  });
  const sheetLine = (unsealedIds: string[]) =>
    linesOf(makeSideBySide(comparisonOf([closed], { unsealedIds }))).find((line) => line.startsWith('Sheet'));
  expect(sheetLine([])).toBe('Sheet: Closed, revision 1');
  expect(sheetLine([C])).toBe('Sheet: Closed, revision 1 (as it stands now, not as sealed)');
});

describe('voltages', () => {
  const pack = (packId: string, given: object, endVoltageV?: number) =>
    compared({
      packId,
      nameplate: { ...WREN, name: packId === A ? 'Fell' : 'Tarn', chargeVoltageV: 28.8, cellsInSeries: 8, ...given },
      tests: {
        ...NO_LIVE_TESTS,
        runs: [
          fullRun(1, {
            chargedToV: 28.8,
            chargeAh: 98,
            energyWh: 2500,
            currentA: 20,
            ...(endVoltageV === undefined ? {} : { endVoltageV }),
          }),
        ],
      },
    });
  const said = (...packs: ReturnType<typeof compared>[]) =>
    textsOf(makeSideBySide(comparisonOf(packs)), 'basis').filter((text) => /oltage|ran? lower|runs ended/.test(text));

  // 20 V over 8 cells is 2.5 V, 21.6 V is 2.7 V, 10 V over 4 cells is 2.5 V again.
  it('says nothing of two packs of 25.6 V run down to 20.0 and 20.1 V', () => {
    expect(said(pack(A, {}, 20), pack(B, {}, 20.1))).toEqual([]);
  });
  it('says of a cell that 2.5 and 2.7 V differ', () => {
    expect(said(pack(A, {}, 20), pack(B, {}, 21.6)).map(plain)).toEqual([
      'Capacity runs ended at different voltages of a cell: Fell 2.5 V; Tarn 2.7 V. One that is run lower delivers more.',
    ]);
  });
  it('says that 25.6 and 12.8 V differ, and nothing of ends at 2.5 V of a cell in both', () => {
    expect(said(pack(A, {}, 20), pack(B, { nominalVoltageV: 12.8, cellsInSeries: 4 }, 10)).map(plain)).toEqual([
      'Nominal voltages differ: Fell 25.6 V; Tarn 12.8 V. An ampere-hour or an ampere then stands for different energy and power: Wh compare, Ah and A do not.',
    ]);
  });
  it('says whose nominal voltage and whose end of run are not known', () => {
    expect(said(pack(A, {}, 20), pack(B, { nominalVoltageV: undefined })).map(plain)).toEqual([
      'Nominal voltage not stated: Tarn. Whether Ah and A compare with the others’ is not known.',
      'Where the capacity runs ended is not known: Tarn. One that is run lower delivers more.',
    ]);
  });
});

describe('what is open', () => {
  const grade = (of: 'sound' | 'failed') => ({ kind: 'grade', grade: of, evidence: 'seen' }) as const;
  const without = (...ids: string[]): PackRecord['answers'] =>
    Object.fromEntries(Object.entries(ALL_SOUND).filter(([id]) => !ids.includes(id)));
  const cellsOf = (sheet: Sheet, label: string) => gridOf(sheet).rows.find((row) => row.label === label)?.cells;

  it('is counted beside the findings of its severity: 2 vents of severity I, the lid with no hazard', () => {
    const open = compared({ packId: C, answers: without('cell-vents', 'swollen', 'case-lid'), facts: {} });
    const lines = linesOf(makeSideBySide(comparisonOf([tarn, open])));
    expect(lines.slice(8, 13)).toEqual([
      'I catastrophic: 0 | 0 (2 items still open)',
      'II critical: 0 | 0',
      'III marginal: 0 | 0 (one item still open)',
      'IV negligible: 0 | 0',
      'No hazard: 0 | 0 (one item still open)',
    ]);
  });

  it('draws no sign of a zone in which nothing was graded, names it beneath and calls it open in words', () => {
    const open = compared({
      packId: C,
      nameplate: { ...WREN, name: 'Fell' },
      answers: without('cell-vents', 'swollen'),
    });
    const sheet = makeSideBySide(comparisonOf([tarn, open]));
    expect(cellsOf(sheet, 'Vents')?.[1]).toEqual({ text: '0–100', note: 'nothing graded', glyph: 'notSeen' });
    const drawn = plots(sheet.sections.find(({ id }) => id === 'plots')?.blocks ?? []);
    const profile = drawn.find(({ drawing }) => drawing.alt.startsWith('Zones'))?.drawing;
    const texts = profile?.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])) ?? [];
    expect(texts.at(-1)).toBe('Open, so not drawn: Fell in Vents.');
    expect(profile?.alt).toContain('Fell: Enclosure 100, Wiring 100, Vents open.');
  });

  it('shows a zone as different whose figures are alike and whose lids are not', () => {
    const alike = { text: '100', note: null };
    const closed = { ...alike, glyph: 'sound' as const };
    const dashed = { ...alike, glyph: 'notSeen' as const };
    const row = { id: 'zone', group: null, label: 'Vents' };
    expect(gridRow({ ...row, cells: [closed, dashed] }).differs).toBe(true);
    expect(gridRow({ ...row, cells: [closed, closed] }).differs).toBe(false);
  });

  it('in a pack with a stop sign counts by all it was asked: the zone is a range where a later version asks less', () => {
    const floor = { 'metal-floor': sound };
    const fewer = {
      ...HUT_CHECKLIST,
      version: '0.3.1',
      items: HUT_CHECKLIST.items.filter(({ id }) => id !== 'case-lid' && id !== 'case-label'),
      remedies: HUT_CHECKLIST.remedies.filter(({ id }) => id !== 'own-label'),
    };
    const stop = compared({
      packId: A,
      nameplate: { ...WREN, name: 'Fell' },
      answers: { ...without('case-lid'), ...floor, swollen: grade('failed'), 'case-label': grade('failed') },
      facts: { 'metal-case': 'yes' },
    });
    const other = compared({ packId: B, answers: { ...ALL_SOUND, ...floor }, facts: { 'metal-case': 'yes' } }, fewer);
    const zone = cellsOf(makeSideBySide(comparisonOf([stop, other])), 'Enclosure');
    expect(zone?.[1]?.text).toMatch(/^\d+–\d+$/);
    expect(zone?.[1]?.glyph).toBe('failed');
  });
});

describe('samples of one model', () => {
  const failed = { kind: 'grade', grade: 'failed', evidence: 'seen' } as const;
  const stop = compared({ packId: C, nameplate: WREN, answers: { ...ALL_SOUND, swollen: failed } });
  const fine = (packId: string, route: 'short' | 'whole' = 'whole') =>
    compared({ packId, nameplate: WREN, answers: ALL_SOUND, route });
  const sampleLine = (...packs: ReturnType<typeof compared>[]) =>
    textsOf(makeSideBySide(comparisonOf(packs)), 'basis').find((text) => /^\d samples of/.test(text));

  it.each([
    [
      [stop, fine(A)],
      '2 samples of Wren 24, 1 of them without a score: there are no two scores to set against one another.',
    ],
    [
      [stop, { ...stop, packId: A }],
      '2 samples of Wren 24, all of them without a score: there are no two scores to set against one another.',
    ],
    [
      [fine(A), fine(B, 'short')],
      '2 samples of Wren 24: they were asked differently, so their scores are not set against one another.',
    ],
    [
      [stop, fine(A), fine(B)],
      '3 samples of Wren 24, 1 of them without a score: scores of 100.0. What lies between is what samples differ by, and what is still open.',
    ],
  ])('%#: says what their scores tell, and how many have none', (packs, line) => {
    expect(sampleLine(...packs)).toBe(line);
  });
});

describe('names and prices', () => {
  it('tells packs of one name apart by sample, and by number where that is the same too', () => {
    const twin = (packId: string, sample: string) => compared({ packId, nameplate: { ...WREN, sample } });
    const sheet = makeSideBySide(comparisonOf([twin(A, '1'), twin(B, '2'), twin(C, '2')]));
    expect(gridOf(sheet).columns).toEqual([
      { title: 'Wren 24, sample 1', mark: 'invented demo' },
      { title: 'Wren 24, sample 2 (1)', mark: 'invented demo' },
      { title: 'Wren 24, sample 2 (2)', mark: 'invented demo' },
    ]);
    expect(textsOf(sheet, 'basis').filter((text) => text.startsWith('Wren 24'))[1]).toBe(
      'Wren 24, sample 1 is in a tie with Wren 24, sample 2 (1) and Wren 24, sample 2 (2).',
    );
  });

  it('prices anew without a test anew: 600 with an option of 100 makes 240 per kWh, the option not tested', () => {
    const price = {
      price: 600,
      currency: 'EUR',
      pricedOn: '2026-11-20',
      seller: null,
      label: 'autumn sale',
      options: [{ label: 'heating', price: 100 }],
      leftOut: [],
    };
    const sheet = makeSideBySide(comparisonOf([tarn], { prices: [price] }));
    expect(linesOf(sheet).slice(18, 20)).toEqual([
      'Price: EUR 600.00 (autumn sale; on 20 November 2026; with heating, not tested)',
      'Per delivered kWh, as found: EUR 240.00',
    ]);
  });

  it('refuses no pack, and prices that are not one a pack', () => {
    expect(() => makeSideBySide(comparisonOf([]))).toThrow('makeSideBySide: needs 1 to 8 packs, got 0');
    expect(() => makeSideBySide(comparisonOf([tarn], { prices: [] }))).toThrow(
      'makeSideBySide: prices and protections must be one a pack (1), got 0 and 1',
    );
  });
});
