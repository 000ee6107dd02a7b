import { describe, expect, it } from 'vitest';
import type { CutOff } from '../../../src/schema/live-tests/cut-off.ts';
import { cellBlocks } from '../../../src/sheet/model/live-tests/cell-blocks.ts';
import { cellMarkBlocks } from '../../../src/sheet/model/live-tests/cell-mark-blocks.ts';
import { cutOffBlocks } from '../../../src/sheet/model/live-tests/cut-off-blocks.ts';
import { drainBlocks } from '../../../src/sheet/model/live-tests/drain-blocks.ts';
import { jointBlocks } from '../../../src/sheet/model/live-tests/joint-blocks.ts';
import { parallelBlocks } from '../../../src/sheet/model/live-tests/parallel-blocks.ts';
import { readOutBlocks } from '../../../src/sheet/model/live-tests/read-out-blocks.ts';
import { resistanceBlocks } from '../../../src/sheet/model/live-tests/resistance-blocks.ts';
import { rulerBlocks } from '../../../src/sheet/model/live-tests/ruler-blocks.ts';
import { hutPhoto } from '../hut-pack.ts';
import { contextOf, idOf, MADE } from './bench-tests.ts';
import { MANY_TESTS } from './many-tests.ts';
import { plain, plots, result, said } from './texts-of.ts';

const many = contextOf(MANY_TESTS);
const cutOff = (given: Omit<CutOff, 'made'>) =>
  contextOf({ cutOffs: [{ id: idOf(1), made: MADE, ...given } as never] });
const only = (context: ReturnType<typeof contextOf>) => result(cutOffBlocks(context), `cut-off-${idOf(1)}`);

// Facts of the trade: common practice, no source.
describe('cut-offs', () => {
  it('a sensor that lets charging go on at −12 °C did not act', () => {
    expect(only(cutOff({ kind: 'coldCharge', acted: false, sensorDegC: -12 })).value).toBe('did not act · −12 °C');
  });

  it('one that blocks at −4 °C with an ice pack acted late, and the ice pack is said', () => {
    const trial = only(cutOff({ kind: 'coldCharge', acted: true, sensorDegC: -4, method: 'icePack' }));
    expect(trial.value).toBe('acted late · −4 °C');
    expect(trial.marks).toEqual(['with an ice pack on the sensor']);
    expect(trial.rows).toContain('Held against: 0 °C; too late: −10 °C (by cells of this kind)');
  });

  it('a sensor that melted and a thermal switch that stood in are marked as such, and the BMS did not act', () => {
    const trial = only(
      cutOff({ kind: 'hotDischarge', acted: true, by: 'thermalSwitch', sensorDegC: 84, sensorAfter: 'melted' }),
    );
    expect(trial.value).toBe('did not act · 84 °C');
    expect(trial.marks).toEqual(['sensor melted', 'a thermal switch stood in']);
    expect(trial.rows).toContain('Ended by: a thermal switch, which stands in for the BMS');
  });

  it('one that was not driven far enough is not tested, and says what remains', () => {
    const trial = only(cutOff({ kind: 'highVoltage', acted: false, worstCellVoltageV: 3.6 }));
    expect(trial.value).toBe('not tested far enough · 3.6 V');
    expect(trial.rows).toContain('Still to be tried or noted: a trial that goes far enough, within the nameplate');
  });

  it('tells recovery and what woke the pack, and names the kinds that nobody tried', () => {
    const low = result(cutOffBlocks(many), `cut-off-${idOf(2)}`);
    expect(low.rows).toContain('Came back: with a charger put on, at 11.2 V');
    expect(low.rows).toContain('Woke: with any charger');
    expect(said(cutOffBlocks(many))).toContain('Not tried: Charge current; Cold, discharging; Hot, charging.');
    expect(cutOffBlocks(many, ['chargeCurrent'])).toEqual([]);
    expect(cutOffBlocks(many, ['highVoltage'])).toHaveLength(1);
  });

  it('is held in °F where that is chosen: 0 °C is 32 °F', () => {
    const trial = only({ ...cutOff({ kind: 'coldCharge', acted: true, sensorDegC: -4 }), units: 'imperial' });
    expect(trial.value).toBe('acted late · 25 °F');
    expect(trial.rows[1]).toContain('32 °F; too late: 14 °F');
  });
});

describe('cells', () => {
  it('spread 210 mV from cell 3 to cell 4, in bands by rest voltage, and cannot tell who stands apart of four', () => {
    const set = result(cellBlocks(many), `cells-${idOf(1)}`);
    expect(set.value).toBe('spread 210 mV');
    expect(set.rows).toEqual(
      expect.arrayContaining([
        'Cells read: 4 of 4',
        'Lowest: 3.15 V, cell 3',
        'Highest: 3.36 V, cell 4',
        'Standing apart: cannot tell, fewer than six cells were read',
        'Charge by rest voltage: cells 1, 2: cannot tell, on the plateau; cell 3: below 20 %; cell 4: over 90 %',
        'BMS against the meter: worst +4 mV, cell 1',
        'Mean resistance: 0.205 mΩ (at 1 kHz AC)',
        'Spread of the resistances: 14.6 % of the mean',
      ]),
    );
  });

  it('names cell 6 of eight as standing apart', () => {
    const cells = [3.301, 3.302, 3.3, 3.303, 3.301, 3.21, 3.302, 3.3].map((voltageV, place) => ({
      number: place + 1,
      voltageV,
    }));
    const context = contextOf({ cellSets: [{ id: idOf(1), made: MADE, state: 'underLoad', loadA: 50, cells }] });
    const set = result(cellBlocks(context), `cells-${idOf(1)}`);
    expect(set.marks).toEqual(['under load: nothing is graded by it']);
    expect(set.rows).toContain('Standing apart: cell 6');
    expect(set.sources).toContain('NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1');
  });

  it('leaves an empty place for the cell that was not read', () => {
    const [voltages] = plots(cellBlocks(many, idOf(2)));
    expect(plain(voltages?.drawing.alt ?? '')).toBe(
      'Cell voltages, cell by cell. spread 171 mV, cell 1 3.451 V, cell 2 3.449 V, cell 3 3.620 V, cell 4 not read.',
    );
  });
});

describe('the other matters', () => {
  it('two loads: (13.08 − 12.8) V ÷ (200 − 60) A = 2 mΩ, with the time it was read after', () => {
    const found = result(resistanceBlocks(many), `resistance-${idOf(1)}`);
    expect(found.value).toBe('2 mΩ');
    expect(found.rows).toContain('Read after: 1 s');
    expect(found.inputs).toEqual(['First reading: 13.08 V at 60 A', 'Second reading: 12.8 V at 200 A']);
  });

  it('a pulse near full gives no figure, and says why', () => {
    const found = result(resistanceBlocks(many), `resistance-${idOf(2)}`);
    expect(found).toMatchObject({ title: 'Resistance 2 · of cell 3', value: 'no figure' });
    expect(found.rows[0]).toBe('Why: near full: what relaxes there is surface charge');
  });

  it('a joint 20.1 K warm at 100 A would be 80.4 K at 200 A; 12 mV are 120 µΩ', () => {
    const joint = result(jointBlocks(many), `joint-${idOf(1)}`);
    expect(joint.title).toBe('Joint 1 · plus post · at a terminal');
    expect(joint.value).toBe('20.1 K warmer than the air');
    expect(joint.rows[0]).toBe(
      'At the promised current: 80.4 K warmer than the air (steady state and the same cooling are taken)',
    );
    expect(joint.rows[1]).toBe('Resistance: 120 µΩ');
    expect(result(jointBlocks({ ...many, units: 'imperial' }), `joint-${idOf(1)}`).value).toBe(
      '36.2 °F warmer than the air',
    );
  });

  it('8 mA take 0.192 Ah a day and empty 300 Ah in 1563 days; nothing drawn has no end in sight', () => {
    const drain = result(drainBlocks(many), `drain-${idOf(1)}`);
    expect(drain.value).toBe('8 mA');
    expect(drain.rows.slice(0, 2)).toEqual([
      'Taken in a day: 0.192 Ah',
      'A full pack is flat after: 1563 days (the cells’ own self-discharge is left out)',
    ]);
    const none = contextOf({ drains: [{ id: idOf(1), made: MADE, currentMa: 0 }] });
    expect(result(drainBlocks(none), `drain-${idOf(1)}`).rows[1]).toContain('nothing drawn: no end in sight');
  });

  it('160 and 140 Ah side by side are 53.3 and 46.7 %, 6.7 % off an equal share', () => {
    const run = result(parallelBlocks(many), `parallel-${idOf(1)}`);
    expect(run.value).toBe('worst 6.7 % off an equal share');
    expect(run.rows).toContain('pack 1 · near the load: 160 Ah, 53.3 % (highest 118 A)');
    expect(plots(parallelBlocks(many))).toHaveLength(1);
  });

  it('a read-out that answers at 8 m but asks for an account says both, and no more', () => {
    expect(result(readOutBlocks(many), `read-out-${idOf(1)}`)).toMatchObject({
      title: 'Read-out 1 · wireless',
      value: 'answers',
      rows: ['Answers up to: 8 m', 'Asks for an account: yes'],
      formula: null,
    });
  });

  it('a code shows its date with the raw characters beside it and says that reading well is no proof', () => {
    // 04Q C B 76 G50203J B8R 0001234: B is 2021, 8 August, R the 24th, by the tables in calc/tables.
    const code = result(cellMarkBlocks(many), `cell-mark-${idOf(1)}`);
    expect(code.value).toBe('maker 04Q, 24 August 2021');
    expect(code.rows).toContain('Date of manufacture: 24 August 2021 (characters B8R)');
    expect(code.rows).toContain('Mind: there is no check digit: a code that reads well is no proof');
  });

  it('a code with an O in it names the place and the character; one with no date keeps its characters', () => {
    const bad = contextOf({
      cellMarks: [
        { id: idOf(1), made: MADE, text: '04QCB76G50203JB8R000123O', read: 'typed' },
        { id: idOf(2), made: MADE, text: '04QCB76G50203JBIR0001234', read: 'typed' },
      ],
    });
    const refused = result(cellMarkBlocks(bad), `cell-mark-${idOf(1)}`);
    expect(refused.value).toBe('not a code of GB/T 34014-2017');
    expect(refused.rows).toContain('Why: a character that cannot stand there (place 24: O)');
    expect(result(cellMarkBlocks(bad), `cell-mark-${idOf(2)}`).rows).toContain(
      'Date of manufacture: date not valid (characters BIR, the month’s character is never issued)',
    );
  });

  it('a card 800 px wide and a thing of 320 px beside it: 34.2 mm, ± what hands and the card’s plane leave', () => {
    // 85.6 mm over half of 1600 px is 0.107 mm a pixel; 0.2 of 1600 px is 320 px: 34.24 mm. 5 mm off at 300 mm: 0.57 mm.
    const ruler = result(rulerBlocks({ ...many, photos: [hutPhoto(1)] }), `ruler-${idOf(1)}`);
    expect(ruler.value).toBe('34.2 mm');
    expect(ruler.rows).toContain('Of lying off the card’s plane: ± 0.57 mm');
    expect(ruler.inputs).toEqual(['Off the card’s plane: 5 mm', 'Camera away: 300 mm taken']);
    expect(result(rulerBlocks(many), `ruler-${idOf(1)}`).value).toBe('no distance');
  });
});
