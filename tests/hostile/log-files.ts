import { type Expected, type HostileFile, refused, taken, utf8 } from './hostile-file.ts';
import { HIDDEN, SCRIPTS } from './hostile-texts.ts';
import { tinyJpeg } from './tiny-pictures.ts';

type Row = [name: string, expect: Expected, text: () => string | Uint8Array<ArrayBuffer>];

const HEAD = 'Time [s],Voltage [V],Current [A]';
const rows = (count: number, cell: (i: number) => string = () => '') =>
  Array.from({ length: count }, (_, i) => `${i * 60},${(26.4 - i * 0.05).toFixed(2)},20${cell(i)}`).join('\n');
const wide = (bytes: Uint8Array, odd: number) => Uint8Array.from([0xff, 0xfe, ...bytes, ...new Uint8Array(odd)]);
const utf16 = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));

/** Bench logs that are not what they seem. A log is plain text whatever it holds: `taken` is read, or says what is not there. */
const ROWS: Row[] = [
  ['nothing', refused('empty'), () => ''],
  ['a zip by the name of a log', refused('spreadsheet'), () => Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0, 6, 0)],
  ['a picture by the name of a log', refused('binary'), () => tinyJpeg(1)],
  ['null bytes only', refused('binary'), () => new Uint8Array(4096)],
  ['10 MB in one line', refused('noNumbers'), () => 'x'.repeat(10_000_000)],
  ['10 MB of digits in one cell', taken(), () => `${HEAD}\n${rows(60)}\n${'9'.repeat(10_000_000)}\n${rows(60)}\n`],
  ['null bytes in the rows', taken(), () => `${HEAD}\n${rows(120, (i) => (i % 10 === 0 ? ',\u0000' : ''))}\n`],
  ['UTF-16 with an odd byte', taken(), () => wide(utf16(`${HEAD}\n${rows(120)}\n`), 1)],
  ['100 000 columns', taken(), () => `${HEAD}${',x'.repeat(100_000)}\n${rows(20, () => ',1'.repeat(100_000))}\n`],
  ['formulas in cells', taken(), () => `${HEAD},Remark\n${rows(120, () => `,${SCRIPTS[11]}`)}\n`],
  ['script in column heads', taken(), () => `Time [s],Voltage [V],Current [A],${SCRIPTS.map((text) => text.replaceAll(/[,"]/g, "'")).join(',')}\n${rows(120, () => ',1'.repeat(SCRIPTS.length))}\n`],
  ['script above the rows', taken(), () => `${SCRIPTS.join('\n')}\n${HEAD}\n${rows(120)}\n`],
  ['heads that run backwards', taken(), () => `Time [s],Voltage\u202e [V],Current\u2066 [A]\n${rows(120)}\n`],
  ['every hidden character in a head', taken(), () => `Time [s],Voltage [V],Current [A],${HIDDEN.join('')}x\n${rows(120, () => ',1')}\n`],
  ['numbers like 1e999', taken(), () => `${HEAD}\n${rows(60)}\n4000,1e999,20\n4060,26,-1e999\n1e999,26,20\n${rows(5)}\n`],
  ['a counter of 1e308', taken(), () => `${HEAD},Capacity [Ah]\n${rows(120, (i) => `,${i % 2 === 0 ? '1e308' : '-1e308'}`)}\n`],
  ['times of 1e15 s', taken(), () => `${HEAD}\n${Array.from({ length: 60 }, (_, i) => `${i}e15,26,20`).join('\n')}\n${rows(60)}\n`],
  ['dates in the year 99999', refused('noTime'), () => `Date,Voltage [V],Current [A]\n${Array.from({ length: 60 }, (_, i) => `99999-01-01 10:${String(i).padStart(2, '0')}:00,26,20`).join('\n')}\n`],
  ['dates in the year 9999', taken(), () => `Date,Voltage [V],Current [A]\n${Array.from({ length: 60 }, (_, i) => `9999-12-31 23:${String(i).padStart(2, '0')}:00,26,20`).join('\n')}\n`],
  ['unix times in the year 33658', refused('noNumbers'), () => `Unix time [ms],Voltage [V],Current [A]\n${Array.from({ length: 60 }, (_, i) => `${999_999_999_000_000 + i * 60_000},26,20`).join('\n')}\n`],
  ['a quote that never ends', taken(), () => `${HEAD}\n${rows(60)}\n"${rows(60)}\n`],
  ['volts that no bench has', taken(), () => `${HEAD}\n${Array.from({ length: 60 }, (_, i) => `${i},99999,99999`).join('\n')}\n`],
]; // biome-ignore format: a table

export const LOG_FILES: HostileFile[] = ROWS.map(([name, expect, text]) => ({
  name,
  kind: 'log',
  bytes: async () => {
    const made = text();
    return typeof made === 'string' ? utf8(made) : made;
  },
  expect,
}));
