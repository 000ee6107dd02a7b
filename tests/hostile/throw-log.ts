import { BYTE_CHANGES } from './change-bytes.ts';
import type { Dice } from './dice.ts';
import { utf8 } from './hostile-file.ts';
import { HIDDEN, SCRIPTS } from './hostile-texts.ts';

type Bytes = Uint8Array<ArrayBuffer>;

const CELLS = ['', '-', '1e999', '-1e308', '3.40E+38', '99999-01-01', '2026-02-30 10:00', '24:61:99', '١٢', '1,5', '1.5.5', '"', '"x', "'", '=1+1', '#', '-0', '0x10', '1e-400', 'NaN', 'Infinity', '9'.repeat(400), '\u0000', ...SCRIPTS, ...HIDDEN]; // biome-ignore format: a list
const SEPARATORS = [',', ';', '\t', '|', ' '];

/** Sound logs to begin with: as many forms as exports have. */
export const SOUND_LOGS: readonly string[] = [
  table('Time [s],Voltage [V],Current [A],Temp [°C]', (i) => `${i * 30},${volts(i)},${amps(i)},22.5`),
  table('Zeit;Spannung / V;Strom / A', (i) => `00:${two(i % 60)}:00;${volts(i).replace('.', ',')};${amps(i).replace('.', ',')}`),
  table('Date\tCycle\tStep\tU[mV]\tI[mA]\tCapacity[mAh]', (i) => `2026-03-26 1${i % 10}:${two(i % 60)}:00\t1\t${i < 60 ? 1 : 2}\t${Number(volts(i)) * 1000}\t${Number(amps(i)) * 1000}\t${i * 100}`),
  `Bench 3\nOperator,M. B.\n\n${table('Time,Voltage', (i) => `${i},${volts(i)}`)}`,
]; // biome-ignore format: one log a line

/** Ways to make a hostile log out of a sound one. */
export const LOG_CHANGES: Readonly<Record<string, (sound: string, dice: Dice) => Bytes>> = {
  cells: (sound, dice) =>
    utf8(
      changedLines(sound, dice, (line) => {
        const separator = SEPARATORS.find((mark) => line.includes(mark)) ?? ',';
        const cells = line.split(separator);
        cells[dice.below(cells.length)] = dice.of(CELLS);
        return [cells.join(separator)];
      }),
    ),
  lines: (sound, dice) =>
    utf8(
      changedLines(sound, dice, (line) =>
        dice.of([
          [],
          [line, line],
          [line.slice(1)],
          [`${line}${line}`],
          ['', line],
          [`# ${line}`],
          [line.split('').reverse().join('')],
        ]),
      ),
    ),
  separators: (sound, dice) => utf8(sound.replaceAll(dice.of(SEPARATORS), dice.of([...SEPARATORS, '', '""', '\r']))),
  wide: (sound, dice) => {
    const little = Buffer.from(`${dice.chance(0.5) ? '\ufeff' : ''}${sound}`, 'utf16le');
    const bytes = new Uint8Array(dice.chance(0.5) ? little : little.swap16());
    return dice.chance(0.5) ? bytes.slice(0, -1) : bytes;
  },
  holed: (sound, dice) => {
    const bytes = utf8(sound);
    return bytes.fill(
      dice.of([0, 1, 0x1b, 0xff]),
      dice.below(bytes.length >> 1),
      bytes.length - dice.below(bytes.length >> 1),
    );
  },
  bytes: (sound, dice) => dice.of(Object.values(BYTE_CHANGES))(utf8(sound), dice) as Bytes,
};

function changedLines(sound: string, dice: Dice, change: (line: string) => string[]): string {
  const share = dice.of([0.01, 0.05, 0.3]);
  const lines = sound.split('\n');
  const first = dice.below(lines.length);
  return lines.flatMap((line, at) => (at === first || dice.chance(share) ? change(line) : [line])).join('\n');
}

function table(head: string, row: (i: number) => string): string {
  return `${head}\n${Array.from({ length: 120 }, (_, i) => row(i)).join('\n')}\n`;
}

function volts(i: number): string {
  return (26.4 - i * 0.05).toFixed(3);
}

function amps(i: number): string {
  return i < 5 || i > 100 ? '0.0' : '20.0';
}

function two(i: number): string {
  return String(i).padStart(2, '0');
}
