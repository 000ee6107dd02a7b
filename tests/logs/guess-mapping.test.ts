import { describe, expect, it } from 'vitest';
import { namedColumn } from '../../src/logs/column-words.ts';
import { columnUse } from '../../src/logs/guess-columns.ts';
import { latin1, quantities, readBytes, readText } from './read-text.ts';

/** A few rows under given names, every column rising a little from where it begins. */
function log(names: string, first: readonly number[], rows = 12): string {
  const lines = Array.from({ length: rows }, (_, row) =>
    first.map((value) => (value * (1 + row / 1000) + (value === 0 ? row : 0)).toFixed(3)).join(','),
  );
  return `${names}\n${lines.join('\n')}\n`;
}

describe('columns by name and unit', () => {
  it.each([
    ['Time [s]', 'time s'],
    ['time_s', 'time s'],
    ['Test Time / s', 'time s'],
    ['test_time_second', 'time s'],
    ['Elapsed (min)', 'time min'],
    ['~Time[h]', 'time h'],
    ['Zeit in ms', 'time ms'],
    ['I[A]', 'current A'],
    ['I/mA', 'current mA'],
    ['current_ampere', 'current A'],
    ['Current / A', 'current A'],
    ['Current(mA)', 'current mA'],
    ['Strom [A]', 'current A'],
    ['U[V]', 'voltage V'],
    ['voltage_V', 'voltage V'],
    ['voltage_volt', 'voltage V'],
    ['Voltage / V', 'voltage V'],
    ['Ewe/V', 'voltage V'],
    ['Spannung (mV)', 'voltage mV'],
    ['Volts', 'voltage V'],
    ['power_watt', 'power W'],
    ['Capacity/mA.h', 'charge mAh net'],
    ['chgAh', 'charge Ah in'],
    ['disAh', 'charge Ah out'],
    ['Discharging Capacity / Ah', 'charge Ah out'],
    ['charging_capacity_ah', 'charge Ah in'],
    ['Charge_Capacity(Ah)', 'charge Ah in'],
    ['discharging_energy_wh', 'energy Wh out'],
    ['surface_degC', 'temperature \u00b0C'],
    ['temperature_t1_celsius', 'temperature \u00b0C'],
    ['Temperature T1 / degC', 'temperature \u00b0C'],
    ['Temp [\u00b0C]', 'temperature \u00b0C'],
    ['Temp (\u00b0F)', 'temperature \u00b0F'],
    ['step_index', 'step'],
    ['Cycle Count / 1', 'step'],
  ])('takes "%s" for %s', (name, expected) => {
    const found = namedColumn(name, '');
    const words = [found?.quantity, found?.unit?.unit, found?.counts].filter((word) => word != null);
    expect(words.join(' ')).toBe(expected);
  });

  it.each(['entity_id', 'Efficiency/%', 'Comment', '', 'soc_percent', 'Record'])('makes nothing of "%s"', (name) => {
    expect(namedColumn(name, '')).toBeNull();
  });

  it('prefers what was measured to what was worked out, total time to step time, the pack to its surroundings', () => {
    const read = readText(
      log(
        'Step Time (s),Test Time (s),Ewe-Ece/V,Voltage (V),dV/dt (V/s),Current (A),air (degC),Temp (degC)',
        [0, 0, 2, 3, 1, 5, 20, 25],
      ),
    );
    expect(read.mapping.columns.map(({ quantity }) => quantity)).toEqual([
      'ignored',
      'time',
      'ignored',
      'voltage',
      'ignored',
      'current',
      'ignored',
      'temperature',
    ]);
  });

  it('takes units from a units row, and the first of two columns of one name', () => {
    const read = readText('Time,U,U,I\nmin,mV,mV,mA\n0,3310,9,500\n1,3309,8,500\n2,3308,7,500\n');
    expect(quantities(read)).toBe('time min, voltage mV, ignored, current mA');
    expect(read.mapping.timeFormat).toBe('minutes');
    expect(Array.from(read.reading.columns.timeS)).toEqual([0, 60, 120]);
    expect(read.reading.columns.voltageV?.[0]).toBeCloseTo(3.31, 12);
    expect(read.reading.columns.currentA?.[0]).toBeCloseTo(0.5, 12);
  });

  it('believes the numbers where a name contradicts them: Volts of 1300 to 3800 are millivolts', () => {
    const read = readText('Seconds,Volts,Amps\n0,3800,1.0\n1,3700,1.0\n2,2500,1.0\n3,1300,1.0\n');
    expect(read.mapping.columns[1]).toMatchObject({ quantity: 'voltage', unit: 'mV', unitFrom: 'numbers' });
    expect(read.reading.columns.voltageV?.[0]).toBeCloseTo(3.8, 12);
    expect(read.mapping.columns[2]).toMatchObject({ unit: 'A', unitFrom: 'name' });
  });

  it('leaves 48.0 Volts alone', () => {
    expect(readText(log('Seconds,Volts,Amps', [0, 48, 10])).mapping.columns[1]).toMatchObject({
      unit: 'V',
      unitFrom: 'name',
    });
  });

  it('reads kelvin and Fahrenheit as degrees Celsius: 298.15 K and 77 °F are 25 °C (definition)', () => {
    expect(readText('s,V,K\n0,3.3,298.15\n1,3.3,298.15\n').reading.columns.temperatureDegC?.[0]).toBeCloseTo(25, 10);
    expect(readText(latin1('s,V,Temp (\xb0F)\n0,3.3,77\n1,3.3,77\n')).reading.columns.temperatureDegC?.[0]).toBeCloseTo(
      25,
      10,
    );
  });

  it('tells columns without any names apart: time rises, voltage is never near 0', () => {
    const rows = Array.from(
      { length: 40 },
      (_, row) => `${row},${row < 5 || row > 30 ? 0 : -1.5},${(3.3 - row / 500).toFixed(3)}`,
    );
    const read = readText(rows.join('\n'));
    expect(read.mapping.columns.map(({ quantity, unitFrom }) => `${quantity} ${unitFrom}`)).toEqual([
      'time assumed',
      'current assumed',
      'voltage assumed',
    ]);
    expect(read.runs).toHaveLength(1);
  });

  it('reads long exports that name the quantity in a text column', () => {
    const read = readText(
      'entity_id,state,last_changed\nsensor.pack_voltage,13.2,2026-03-26T10:00:00Z\nsensor.pack_voltage,13.1,2026-03-26T10:01:00Z\n',
    );
    expect(quantities(read)).toBe('ignored, voltage V, time s');
  });

  it('refuses a table without time: noTime', () => {
    const read = readText('soc_percent,v_mean\n0,2.0\n1,2.5\n2,2.8\n');
    expect(read.reading.refused).toBe('noTime');
    expect(read.runs).toEqual([]);
  });

  it.each([
    ['noNumbers', 'Dear tester,\nno log today.\n'],
    ['empty', ''],
    ['noVoltageOrCurrent', 'Time [s],Temp [degC]\n0,25\n1,25\n2,26\n'],
  ])('refuses with %s', (refused, text) => {
    expect(readText(text).reading).toMatchObject({ refused, counts: { rowsRead: 0 } });
  });
});

describe('what a person set right', () => {
  const text = 'a,b,c\n0,3310,20\n60,3300,20\n120,3290,20\n';

  it('reads again with other quantities, units, time and sign', () => {
    const read = readText(text, (mapping) => ({
      ...mapping,
      columns: [columnUse('time', 's'), columnUse('voltage', 'mV'), columnUse('current', 'A')],
      timeFormat: 'minutes',
      outIs: 'negative',
      signBecause: 'user',
    }));
    expect(Array.from(read.reading.columns.timeS)).toEqual([0, 3600, 7200]);
    expect(read.reading.columns.voltageV?.[2]).toBeCloseTo(3.29, 12);
    expect(read.reading.sign).toEqual({ outIs: 'negative', because: 'user' });
    expect(read.runs[0]).toMatchObject({ kind: 'charge', chargeAh: 40 });
  });

  it('keeps a chosen separator and header when guessing again', () => {
    const read = readBytes(new TextEncoder().encode('Time;Volt\nTime [s];U [V]\n0;3,3\n1;3,2\n'), {
      choice: { headerLine: 2 },
    });
    expect(read.mapping.layout).toMatchObject({ headerLine: 2, columnNames: ['Time [s]', 'U [V]'] });
  });

  it('is plain JSON', () => {
    const { mapping } = readText(text);
    expect(JSON.parse(JSON.stringify(mapping))).toEqual(mapping);
  });
});

describe('sign of current', () => {
  /** Rest, half an hour of load, rest: voltage falls under the load when `falls`. */
  function loaded({
    amperes,
    falls,
    head = 'Time [s],I [A],U [V]',
    extra = () => '',
  }: {
    amperes: number;
    falls: boolean;
    head?: string;
    extra?: (row: number, on: boolean) => string;
  }): string {
    const lines = Array.from({ length: 90 }, (_, row) => {
      const on = row >= 20 && row < 70;
      const volts = on ? 13.2 + (falls ? -0.2 - row / 1000 : 0.2 + row / 1000) : 13.2;
      return `${row * 30},${on ? amperes : 0},${volts.toFixed(3)}${extra(row, on)}`;
    });
    return `${head}\n${lines.join('\n')}\n`;
  }

  it.each([
    ['positive', 20, true],
    ['negative', -20, true],
    ['negative', 20, false],
    ['positive', -20, false],
  ] as const)('finds out %s from voltage steps: %d A, falls %s', (outIs, amperes, falls) => {
    const read = readText(loaded({ amperes, falls }));
    expect(read.reading.sign).toEqual({ outIs, because: 'currentSteps' });
    expect(read.runs.map(({ kind }) => kind)).toEqual([falls ? 'discharge' : 'charge']);
    expect(Math.sign(read.reading.columns.currentA?.[30] ?? 0)).toBe(falls ? 1 : -1);
  });

  it('finds it from a voltage that falls while current flows, where no step is seen', () => {
    const rows = Array.from({ length: 50 }, (_, row) => `${row},-5.0,${(13.1 - row / 100).toFixed(2)}`);
    expect(readText(`Time [s],I [A],U [V]\n${rows.join('\n')}\n`).reading.sign).toEqual({
      outIs: 'negative',
      because: 'voltageTrend',
    });
  });

  it('finds it from capacity counters first', () => {
    const extra = (row: number, on: boolean) => `,${on ? (row / 100).toFixed(3) : row < 20 ? '0.2' : '0.7'}`;
    const read = readText(
      loaded({ amperes: -20, falls: true, head: 'Time [s],I [A],U [V],Discharge capacity [Ah]', extra }),
    );
    expect(read.reading.sign).toEqual({ outIs: 'negative', because: 'counters' });
  });

  it('turns unsigned current by letters of state', () => {
    const rows = Array.from({ length: 60 }, (_, row) => {
      const state = row < 20 ? 'D' : row < 40 ? 'R' : 'C';
      return `${row * 60},${state},${state === 'R' ? 0 : 10},${(state === 'D' ? 13 - row / 100 : 13 + row / 100).toFixed(2)}`;
    });
    const read = readText(`Test (s),State,Amps,Volts\n${rows.join('\n')}\n`);
    expect(quantities(read)).toBe('time s, state, current A, voltage V');
    expect(read.reading.sign).toEqual({ outIs: 'unsigned', because: 'stateColumn' });
    expect(read.runs.map(({ kind, chargeAh }) => [kind, chargeAh])).toEqual([
      ['discharge', expect.closeTo((10 * 19) / 60, 9)],
      ['charge', expect.closeTo((10 * 19) / 60, 9)],
    ]);
  });

  it('turns unsigned current by what the voltage does where there is no state', () => {
    const rows = Array.from({ length: 90 }, (_, row) => {
      const [out, charging] = [row >= 10 && row < 40, row >= 50 && row < 80];
      return `${row * 60},${out || charging ? 10 : 0},${(13.2 + (out ? -0.2 - row / 1000 : charging ? 0.2 + row / 1000 : 0)).toFixed(3)}`;
    });
    const read = readText(`Time [s],I [A],U [V]\n${rows.join('\n')}\n`);
    expect(read.reading.sign).toEqual({ outIs: 'unsigned', because: 'risesAndFalls' });
    expect(read.runs.map(({ kind }) => kind)).toEqual(['discharge', 'charge']);
  });

  it('takes it from the name where the voltage says nothing', () => {
    const rows = Array.from({ length: 20 }, (_, row) => `${row},5.0,13.2`).join('\n');
    expect(readText(`Time [s],Discharge current [A],U [V]\n${rows}\n`).reading.sign).toEqual({
      outIs: 'positive',
      because: 'columnName',
    });
    expect(readText(`Time [s],Charging current [A],U [V]\n${rows}\n`).reading.sign).toEqual({
      outIs: 'negative',
      because: 'columnName',
    });
  });

  it('says that it cannot tell', () => {
    const rows = Array.from({ length: 20 }, (_, row) => `${row},5.0,13.2`).join('\n');
    expect(readText(`Time [s],I [A],U [V]\n${rows}\n`).reading.sign.because).toBe('cannotTell');
  });
});
