import { describe, expect, it } from 'vitest';
import { guessLayout } from '../../src/logs/guess-layout.ts';
import type { LayoutChoice } from '../../src/logs/log-layout.ts';
import { latin1 } from './read-text.ts';

const of = (text: string, choice?: LayoutChoice) => guessLayout(new TextEncoder().encode(text), choice);
const ROWS = '0,3.31,1.0\n1,3.30,1.0\n2,3.29,1.0\n';

describe('guessLayout', () => {
  it.each([
    ['comma', ',', '.', 'time,volt,amp\n0,3.31,1\n1,3.30,1\n'],
    ['semicolon and decimal comma in a .csv', ';', ',', 'time;volt;amp\n0;3,31;1,0\n1;3,30;1,0\n'],
    ['semicolon and decimal comma, three decimals', ';', ',', 'time;volt;amp\n0;3,310;1,000\n1;3,305;1,000\n'],
    ['tab', '\t', '.', 'time\tvolt\tamp\n0\t3.31\t1\n1\t3.30\t1\n'],
    ['tab and decimal comma in a .txt', '\t', ',', 'time\tvolt\tamp\n0\t3,31\t1,5\n1\t3,30\t1,5\n'],
    ['bar', '|', '.', 'time|volt|amp\n0|3.31|1\n1|3.30|1\n'],
    ['columns set with spaces', ' ', '.', '  time   volt  amp\n   0   3.31    1\n   1   3.30    1\n'],
    ['commas with blanks after them', ',', '.', 'time, volt, amp\n0, 3.31, 1\n1, 3.30, 1\n'],
  ] as const)('finds %s', (_, separator, decimalMark, text) => {
    expect(of(text)).toMatchObject({
      separator,
      decimalMark,
      headerLine: 1,
      firstDataLine: 2,
      columnNames: ['time', 'volt', 'amp'],
    });
  });

  it('passes a UTF-8 byte order mark, with a header and without one', () => {
    const mark = '\ufeff';
    expect(of(`${mark}t,v,i\n${ROWS}`)).toMatchObject({
      byteOrderMarkBytes: 3,
      headerLine: 1,
      columnNames: ['t', 'v', 'i'],
    });
    expect(of(`${mark}${ROWS}`)).toMatchObject({ byteOrderMarkBytes: 3, headerLine: null, firstDataLine: 1 });
  });

  it('has no header where the first line holds numbers', () => {
    expect(of(ROWS)).toMatchObject({ headerLine: null, unitsLine: null, firstDataLine: 1, columnNames: ['', '', ''] });
  });

  it('reads UTF-16 with and without its mark', () => {
    const bytes = Uint8Array.from([...`t,v,i\n${ROWS}`].flatMap((character) => [character.charCodeAt(0), 0]));
    expect(guessLayout(Uint8Array.from([0xff, 0xfe, ...bytes]))).toMatchObject({
      encoding: 'utf16le',
      byteOrderMarkBytes: 2,
      columnNames: ['t', 'v', 'i'],
    });
    expect(guessLayout(bytes)).toMatchObject({ encoding: 'utf16le', byteOrderMarkBytes: 0, firstDataLine: 2 });
  });

  it('reads Latin-1 degree signs', () => {
    const layout = guessLayout(latin1(`Zeit [s],Temp [\xb0C],U [V]\n${ROWS}`));
    expect(layout).toMatchObject({ encoding: 'latin1', columnNames: ['Zeit [s]', 'Temp [\u00b0C]', 'U [V]'] });
  });

  it('gets past invalid bytes and control characters in a preamble', () => {
    const layout = guessLayout(latin1(`Bench \xff\xfe\x00\x07 log\x1b\nOperator: \x80\xc3(\n\nt,v,i\n${ROWS}`));
    expect(layout).toMatchObject({ headerLine: 4, firstDataLine: 5, columnNames: ['t', 'v', 'i'] });
  });

  it('takes CRLF for line ends, and CR alone', () => {
    expect(of(`t,v,i\n${ROWS}`.replaceAll('\n', '\r\n'))).toMatchObject({
      lineEnd: 'lf',
      columnNames: ['t', 'v', 'i'],
    });
    expect(of(`t,v,i\n${ROWS}`.replaceAll('\n', '\r'))).toMatchObject({
      lineEnd: 'cr',
      headerLine: 1,
      firstDataLine: 2,
    });
  });

  it.each([3, 12, 32])('finds the rows under a preamble of %i lines with a small table of its own', (lines) => {
    const notes = Array.from({ length: lines - 3 }, (_, place) => `Setting ${place}: ${place * 2}`);
    const preamble = ['Channel,Limit,Unit', '1,14.6,V', '2,50,A', ...notes];
    expect(
      of(`${preamble.join('\n')}\nTime,Voltage,Current,Step\n0,3.31,1.0,1\n1,3.30,1.0,1\n2,3.29,1.0,1\n3,3.28,1.0,1\n`),
    ).toMatchObject({
      headerLine: lines + 1,
      firstDataLine: lines + 2,
      columnNames: ['Time', 'Voltage', 'Current', 'Step'],
    });
  });

  it.each([
    ['two text cells of five', '1,14.6,V,50,high\n2,12.0,A,40,low\n3,11.0,A,40,low'],
    ['one text cell of five', '1,14.6,3,50,high\n2,12.0,2,40,low\n3,11.0,2,40,low'],
  ])('passes a table in the preamble as wide as the rows, %s', (_, table) => {
    const rows = Array.from({ length: 60 }, (_, row) => `${row},3.31,1.0,25,1`).join('\n');
    const notes = Array.from({ length: 20 }, (_, place) => `Note ${place}`).join('\n');
    expect(of(`${table}\n${notes}\nTime,Voltage,Current,Temp,Step\n${rows}\n`)).toMatchObject({
      headerLine: 24,
      firstDataLine: 25,
    });
    const near = of(`${table}\nTime,Voltage,Current,Temp,Step\n${rows}\n`);
    expect(near.headerLine).toBe(table.includes('V') ? 4 : near.headerLine);
  });

  it('gets past [Section] markers', () => {
    expect(of(`[Header]\nName,Pack 7\n[Data]\nt,v,i\n${ROWS}`)).toMatchObject({ headerLine: 4, firstDataLine: 5 });
  });

  it('reads a header among comment lines that begin with ~', () => {
    expect(of(`~Bench 3\n~Start 10:00\n~Time[h],U[V],I[A]\n${ROWS}`)).toMatchObject({
      commentMark: '~',
      headerLine: 3,
      firstDataLine: 4,
      columnNames: ['Time[h]', 'U[V]', 'I[A]'],
    });
  });

  it.each([
    ['plain', 's,V,A'],
    ['in brackets', '[s],[V],[A]'],
    ['in parentheses', '(s),(mV),(mA)'],
    ['with a gap', 'hh:mm:ss,V,mA'],
  ])('finds a units row, %s', (_, units) => {
    const layout = of(`Time,Voltage,Current\n${units}\n${ROWS}`);
    expect(layout).toMatchObject({
      headerLine: 1,
      unitsLine: 2,
      firstDataLine: 3,
      columnNames: ['Time', 'Voltage', 'Current'],
    });
    expect(layout.columnUnits).toEqual(units.split(','));
  });

  it('keeps duplicated names and empty columns at the end in their places', () => {
    expect(of('t,v,v,,\n0,3.31,3.32,,\n1,3.30,3.31,,\n').columnNames).toEqual(['t', 'v', 'v', '', '']);
  });

  it('finds names over rows that are often empty', () => {
    expect(of('t,v,i,temp\n0,3.31,1.0,25\n1,3.30,1.0,\n2,3.29,1.0,\n3,3.28,1.0,25\n')).toMatchObject({
      headerLine: 1,
      firstDataLine: 2,
    });
  });

  it('loses no first row that is wider than most: the last cell on every third row only', () => {
    const rows = Array.from({ length: 30 }, (_, row) => `${row},3.31,1.0${row % 3 === 0 ? ',25' : ''}`).join('\n');
    expect(of(`t,v,i,temp\n${rows}\n`)).toMatchObject({
      headerLine: 1,
      firstDataLine: 2,
      columnNames: ['t', 'v', 'i', 'temp'],
    });
  });

  it('loses no first row that is two cells wider than most', () => {
    const rows = Array.from({ length: 30 }, (_, row) => `${row},3.31,1.0${row % 3 === 0 ? ',25,26' : ''}`).join('\n');
    expect(of(`t,v,i,cell,air\n${rows}\n`)).toMatchObject({ headerLine: 1, firstDataLine: 2 });
  });

  it('keeps what a person set, and finds the rest round it', () => {
    const text = 'old,names,here\nt,v,i\n0,3.31,1.0\n1,3.30,1.0\n';
    expect(of(text)).toMatchObject({ headerLine: 2 });
    expect(of(text, { headerLine: 1 })).toMatchObject({
      headerLine: 1,
      firstDataLine: 3,
      columnNames: ['old', 'names', 'here'],
    });
    expect(of(text, { headerLine: null })).toMatchObject({
      headerLine: null,
      firstDataLine: 3,
      columnNames: ['', '', ''],
    });
    expect(of('0;3,31;1\n1;3,30;1\n', { separator: ';', decimalMark: '.' })).toMatchObject({
      separator: ';',
      decimalMark: '.',
    });
  });

  it('makes no columns of prose, of nothing and of noise', () => {
    expect(of('Dear tester,\nthe log is in the other mail.\n').columnNames).toEqual([]);
    expect(of('').columnNames).toEqual([]);
    expect(
      guessLayout(Uint8Array.from({ length: 5000 }, (_, place) => (place * 7919) % 251)).columnNames.length,
    ).toBeLessThan(3);
  });
});
