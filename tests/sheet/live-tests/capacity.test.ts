import { describe, expect, it } from 'vitest';
import { costBlocks } from '../../../src/sheet/model/live-tests/cost-blocks.ts';
import { deliveredBlocks } from '../../../src/sheet/model/live-tests/delivered-blocks.ts';
import { rateBlocks } from '../../../src/sheet/model/live-tests/rate-blocks.ts';
import { runBlocks } from '../../../src/sheet/model/live-tests/run-blocks.ts';
import { runPlotBlocks } from '../../../src/sheet/model/live-tests/run-plot-blocks.ts';
import { contextOf, fullRun, idOf, MADE, PACK_300 } from './bench-tests.ts';
import { MANY_NAMEPLATE, MANY_TESTS } from './many-tests.ts';
import { plain, plots, result, said, textsOf } from './texts-of.ts';

const LOAD = {
  id: idOf('a'),
  made: MADE,
  name: 'Load 1',
  currentReadingPct: 0.5,
  currentAbsoluteA: 0.05,
  voltageReadingPct: 0.1,
  voltageAbsoluteV: 0.01,
};
const hardDisconnect = fullRun(2, { chargeAh: 292.2, currentA: 200, end: 'packDisconnect', label: 'hard' });

// Facts of the trade: a 300 Ah pack and its runs; common practice, no source.
describe('a 300 Ah pack that was only run at a hard rate until it disconnected: 292.2 Ah', () => {
  const context = contextOf({ runs: [hardDisconnect] });

  it('is said to hold at least 292.2 Ah, at least 97.4 % of what was promised', () => {
    const delivered = result(deliveredBlocks(context), 'delivered');
    expect(delivered.value).toBe('at least 292.2 Ah');
    expect(delivered.rows).toContain('Of the promised capacity: at least 97.4 %');
    expect(delivered.rows).toContain('Rests on: the most that any run gave: Run 1 · hard');
    expect(plain(plots(deliveredBlocks(context))[0]?.drawing.alt ?? '')).toContain(
      'Capacity: at least 292.2 Ah of 300 Ah promised',
    );
  });

  it('says why the run does not count: it was disconnected on the plateau', () => {
    expect(said(deliveredBlocks(context))).toEqual([
      'list',
      'Run 1 · hard does not count as capacity: it was disconnected on the plateau',
    ]);
    const run = result(runBlocks(context), `run-${idOf(2)}`);
    expect(run.value).toBe('at least 292.2 Ah');
    expect(run.marks).toEqual([]);
    expect(run.rows).toContain('Counts as capacity: no (it was disconnected on the plateau)');
    expect(run.rows).toContain('Ended: the pack disconnected, with no knee before');
  });

  it('gives no retention, no exponent and no cost, and says what is missing', () => {
    expect(result(rateBlocks(context), 'rate')).toMatchObject({
      value: 'cannot be told',
      rows: ['Why: it takes complete runs at two different currents', 'Complete runs: 0 of 1'],
    });
    expect(result(costBlocks(context), 'cost').rows).toEqual([
      'Why: no complete run: a run that may hold more says nothing of the cost',
    ]);
  });
});

describe('the same pack with 322.6 Ah at 0.2C beside it', () => {
  const context = contextOf({ runs: [fullRun(1, { chargeAh: 322.6, currentA: 60 }), hardDisconnect] });

  it('delivers 322.6 Ah, 107.5 % of what was promised, from one complete run', () => {
    const delivered = result(deliveredBlocks(context), 'delivered');
    expect(delivered.value).toBe('322.6 Ah');
    expect(delivered.rows).toContain('Of the promised capacity: 107.5 %');
    expect(delivered.rows).toContain('Rests on: one complete run, 60 A, 0.2C (Run 1)');
  });

  it('still has neither retention nor exponent: one complete run of two', () => {
    const blocks = rateBlocks(context);
    expect(result(blocks, 'rate').rows).toContain('Complete runs: 1 of 2');
    expect(textsOf(blocks).join(' ')).not.toMatch(/90\.6|retention =/);
  });
});

describe('a pack that gave 292.2 Ah at 0.2C and 292.0 Ah at 200 A, both complete', () => {
  const context = contextOf({
    runs: [fullRun(1, { chargeAh: 292.2, currentA: 60 }), fullRun(2, { chargeAh: 292, currentA: 200 })],
  });

  it('keeps 99.9 % and has an exponent of 1.001: the rate costs no charge', () => {
    // ln((292.2/60)/(292/200)) ÷ ln(200/60) = 1.000569, worked by hand.
    const blocks = rateBlocks(context);
    expect(result(blocks, 'retention')).toMatchObject({
      value: '99.9 %',
      rows: ['Gentle: 60 A (Run 1)', 'Hard: 200 A (Run 2)'],
      inputs: ['Run 1: 60 A, 292.2 Ah', 'Run 2: 200 A, 292 Ah'],
    });
    expect(result(blocks, 'peukert')).toMatchObject({
      value: '1.001',
      rows: [
        'What it says: the rate costs no charge',
        'Uncertainty: not given (it takes complete runs at three different currents)',
        'Runs used: Run 1, Run 2',
      ],
      uncertainty: null,
    });
  });

  it('costs 106.95 per kWh at a price of 400, and says that it rests on nominal voltage', () => {
    const cost = result(costBlocks(context), 'cost');
    expect(cost.value).toBe('106.95 per kWh');
    expect(cost.marks).toEqual(['on nominal voltage']);
    expect(cost.rows).toEqual([
      'Rests on: charge × nominal voltage: the energy was not measured',
      'Price: 400 (day not said)',
      'Uncertainty: not given: no instrument with its accuracy stated in full',
    ]);
    expect(cost.formula).toBe('cost = price ÷ (charge × nominal voltage)');
    expect(cost.inputs).toEqual(['Price: 400', 'Charge delivered: 292.2 Ah', 'Nominal voltage: 12.8 V']);
    expect(cost.uncertainty).toBeNull();
  });

  it('costs EUR 106.67 on 3750 Wh that were measured, ± EUR 0.75', () => {
    // 400 ÷ 3.75 kWh = 106.667. Half-widths on the energy: current 0.005 · 3750 + 0.05 · 12.8337 · 4.87 h = 21.875 Wh;
    // voltage 0.001 · 3750 + 0.01 · 292.2 = 6.672 Wh; together ÷ √3: 13.204 Wh; 2 · 13.204 ÷ 3750 · 106.667 = 0.7512.
    const measured = contextOf(
      {
        instruments: [LOAD],
        runs: [fullRun(1, { chargeAh: 292.2, currentA: 60, energyWh: 3750, instrumentId: LOAD.id })],
      },
      { ...PACK_300, currency: 'EUR', pricedOn: '2026-10-01' },
    );
    const cost = result(costBlocks(measured), 'cost');
    expect(cost.value).toBe('EUR 106.67 per kWh');
    expect(cost.marks).toEqual([]);
    expect(cost.rows).toEqual([
      'Rests on: measured energy',
      'Price: EUR 400.00 (1 October 2026)',
      'Uncertainty: ± EUR 0.75 (k = 2)',
    ]);
    expect(cost.uncertainty).toContain('the price is taken as exact');
    expect(cost.uncertainty).toContain('Load 1: current ± (0.5 % of the reading + 0.05 A)');
  });
});

describe('three complete runs at 60, 100 and 200 A', () => {
  const peukert = (...chargesAh: [number, number, number]) => {
    const runs = [60, 100, 200].map((currentA, place) => {
      return fullRun(place + 1, { currentA, chargeAh: chargesAh[place] ?? Number.NaN });
    });
    return result(rateBlocks(contextOf({ runs })), 'peukert');
  };

  it('of 292.2, 291 and 285 Ah: 1.021 ± 0.012 (k = 2), from the scatter of the runs', () => {
    // scipy 1.17.1, linregress(log I, log(Q/I)): slope −1.0212609, stderr 0.0061585.
    const found = peukert(292.2, 291, 285);
    expect(found).toMatchObject({
      value: '1.021',
      rows: [
        'What it says: a harder rate costs charge',
        'Uncertainty: ± 0.012 (k = 2) (from the scatter of the runs)',
        'Runs used: Run 1, Run 2, Run 3',
      ],
    });
    expect(found.uncertainty).toContain('k = 2 covers less than 95 %');
    expect(found.sources.join(' ')).toContain('standard deviation of a slope');
  });

  it('of 292.2, 283 and 288 Ah: 1.010 ± 0.049, which cannot be told from 1', () => {
    // The same: slope −1.0098742, stderr 0.0246029.
    expect(peukert(292.2, 283, 288).value).toBe('1.010');
    expect(peukert(292.2, 283, 288).rows.slice(0, 2)).toEqual([
      'What it says: the runs scatter too much to tell it from 1',
      'Uncertainty: ± 0.049 (k = 2) (from the scatter of the runs)',
    ]);
  });

  it('of the same charge each: under ± 0.0010, one in the last digit of the exponent', () => {
    expect(peukert(292, 292, 292)).toMatchObject({ value: '1.000' });
    expect(peukert(292, 292, 292).rows[1]).toBe('Uncertainty: under ± 0.0010 (k = 2) (from the scatter of the runs)');
  });
});

describe('what one run says', () => {
  it('gives ± 2.0 Ah at k = 2 for 292.2 Ah with a load of 0.5 % + 0.05 A: (1.461 + 0.2435) ÷ √3 · 2 = 1.97', () => {
    const context = contextOf({
      instruments: [LOAD],
      runs: [fullRun(1, { chargeAh: 292.2, currentA: 60, instrumentId: LOAD.id })],
    });
    const run = result(runBlocks(context), `run-${idOf(1)}`);
    expect(run.rows).toContain('Uncertainty of the charge: ± 2.0 Ah (k = 2)');
    expect(run.rows).toContain('Measured with: Load 1');
    expect(run.uncertainty).toBe(
      'from the stated accuracy of Load 1: current ± (0.5 % of the reading + 0.05 A), a rectangular half-width, the same error all through the run',
    );
  });

  it('says what nobody noted instead of leaving it out', () => {
    const context = contextOf({ runs: [{ id: idOf(1), made: MADE, chargeAh: 120 }] });
    const { rows } = result(runBlocks(context), `run-${idOf(1)}`);
    expect(rows).toEqual([
      'Of the promised capacity: 40.0 %',
      'Began: charged to: not said, until which current: not said, rest: not said',
      'Ended: not said',
      'Counts as capacity: no (how it ended is not known; how full it began is not said in full)',
      'Voltage sensed at: not said',
      'Uncertainty: not given (no instrument is noted)',
    ]);
  });

  it('names log, lines, gaps and how far the instrument’s own counter is off: 292.3 Ah against 292, +0.10 %', () => {
    const context = contextOf(MANY_TESTS, MANY_NAMEPLATE);
    const run = result(runBlocks(context, idOf(2)), `run-${idOf(2)}`);
    expect(run.title).toBe('Run 2 · hard · 21 November 2026');
    expect(run.rows).toContain(
      'From the log: hut-300-hard.csv, lines 12 to 2990 (2979 rows, 2 gaps, the longest 75 s)',
    );
    expect(run.rows).toContain('The instrument’s own counter: 292.3 Ah (+0.10 %) (against the sum over the rows)');
    expect(run.rows).toContain('Energy: 3712 Wh');
    expect(run.rows).toContain('Mean current: 200 A (0.67C)');
    expect(run.rows).toContain('Duration: 87 min 36 s');
    expect(run.rows).toContain('Voltage sensed at: the load’s end of the leads (the drop of the leads counts as lost)');
    expect(run.rows).toContain(
      'What shows it: half-way 12.6 V, last under load 10.1 V, 19.8 % under the voltage half-way, 2.525 V a cell, falling 41 times as steeply as in the middle',
    );
    expect(run.formula).toContain('Q = ∫ I dt');
    expect(run.sources[0]).toContain('NIST Digital Library of Mathematical Functions, eq. 3.5.1');
  });

  it('says both where the tester has it ended otherwise than the log alone', () => {
    const [, hard] = MANY_TESTS.runs;
    if (hard?.log === undefined) throw new Error('run 2 of the many tests comes from a log');
    const context = contextOf({ runs: [{ ...hard, log: { ...hard.log, said: { end: 'packDisconnect' } } }] });
    expect(result(runBlocks(context), `run-${idOf(2)}`).rows).toContain(
      'Ended: empty: the voltage fell over its knee (opened by the BMS; said by the tester; the log alone: the pack disconnected, with no knee before)',
    );
  });

  it('holds a charge for a charge, which delivered nothing', () => {
    const context = contextOf({ runs: [fullRun(1, { chargeAh: 301, end: 'taper' })] });
    expect(result(runBlocks(context), `run-${idOf(1)}`)).toMatchObject({ value: '301 Ah', marks: ['a charge'] });
    expect(result(deliveredBlocks(context), 'delivered').value).toBe('not known');
  });

  it('shows one run alone where it is asked for, still under its number', () => {
    expect(runBlocks(contextOf(MANY_TESTS), idOf(3))).toHaveLength(1);
    expect(result(runBlocks(contextOf(MANY_TESTS), idOf(3)), `run-${idOf(3)}`).title).toBe(
      'Run 3 · cold morning · 23 November 2026',
    );
  });
});

describe('curves of the runs', () => {
  it('are drawn over one another by time and by charge, and told in words with their ends', () => {
    const [byTime, byCharge, more] = plots(runPlotBlocks(contextOf(MANY_TESTS, MANY_NAMEPLATE)));
    expect(more).toBeUndefined();
    expect(plain(byTime?.drawing.alt ?? '')).toBe(
      'Voltage and current against time. Run 1 · gentle: 292.2 Ah, ended: empty: the voltage fell over its knee; Run 2 · hard: 292 Ah, ended: empty: the voltage fell over its knee; Run 3 · cold morning: 241.7 Ah, ended: the pack disconnected, with no knee before.',
    );
    expect(textsOf(byCharge?.drawing)).toContain('Charge, Ah');
    expect(textsOf(byTime?.drawing).map(plain)).toContain('cut-off 10 V');
  });

  it('leave out a column whose length is not that of its times, rather than draw it', () => {
    const run = fullRun(1, {
      chargeAh: 10,
      curve: { timeS: [0, 1, 2], voltageV: [13, 12], currentA: [5, 5, 5], chargeAh: null },
    });
    const [plot] = plots(runPlotBlocks(contextOf({ runs: [run] })));
    expect(textsOf(plot?.drawing)).toContain('Current, A');
    expect(textsOf(plot?.drawing)).not.toContain('Voltage, V');
  });

  it('lie over one another from two on, by the caption, and one alone does not', () => {
    const captions = (id?: string) => plots(runPlotBlocks(contextOf(MANY_TESTS), id)).map(({ caption }) => caption);
    const over = 'Runs over one another, each with a sign for how it ended.';
    expect(captions()).toEqual([`Voltage and current against time. ${over}`, `Voltage against charge. ${over}`]);
    const alone = 'The sign at its end says how it ended.';
    expect(captions(idOf(1))).toEqual([
      `Voltage and current against time. ${alone}`,
      `Voltage against charge. ${alone}`,
    ]);
    const short = { timeS: [0, 1], voltageV: [13, 12], currentA: null, chargeAh: null };
    const [first, more] = plots(
      runPlotBlocks(
        contextOf({ runs: [fullRun(1, { curve: { ...short, chargeAh: [0, 1] } }), fullRun(2, { curve: short })] }),
      ),
    ).slice(0, 2);
    expect(first?.caption).toBe(`Voltage against time. ${over}`);
    expect(more?.caption).toBe(`Voltage against charge. ${alone}`);
  });

  it('of voltage alone are told without a current, and of current alone without a voltage', () => {
    const alt = (given: { voltageV: number[] | null; currentA: number[] | null }) => {
      const run = fullRun(1, { chargeAh: 10, curve: { timeS: [0, 1], chargeAh: null, ...given } });
      const [plot] = plots(runPlotBlocks(contextOf({ runs: [run] })));
      return plain(plot?.drawing.alt ?? '');
    };
    const ended = 'Run 1: 10 Ah, ended: empty: the voltage fell over its knee.';
    expect(alt({ voltageV: [13, 12], currentA: null })).toBe(`Voltage against time. ${ended}`);
    expect(alt({ voltageV: null, currentA: [5, 5] })).toBe(`Current against time. ${ended}`);
  });

  it('are not drawn where no run has one', () => {
    expect(runPlotBlocks(contextOf({ runs: [hardDisconnect] }))).toEqual([]);
  });
});

it('says nothing of capacity, rate and cost before there is a run', () => {
  const none = contextOf({});
  expect([...deliveredBlocks(none), ...rateBlocks(none), ...costBlocks(none), ...runBlocks(none)]).toEqual([]);
});
