import { closeSync, openSync, writeSync } from 'node:fs';

const ROWS_A_WRITE = 20_000;

/**
 * Writes an invented log as a bench logger does, one row a second: time, current, voltage, temperature. A load is on for
 * 50 minutes of every hour, so that there are runs to cut; numbers have the figures such loggers print.
 */
export function writeMadeLog(path: string, rows: number): void {
  const file = openSync(path, 'w');
  try {
    writeSync(file, 'Time [s],Current [A],Voltage [V],Temperature [degC]\n');
    for (let from = 0; from < rows; from += ROWS_A_WRITE) {
      writeSync(file, rowsFrom(from, Math.min(rows, from + ROWS_A_WRITE)));
    }
  } finally {
    closeSync(file);
  }
}

function rowsFrom(from: number, to: number): string {
  let text = '';
  for (let row = from; row < to; row++) {
    const inHourS = row % 3600;
    const loaded = inHourS < 3000;
    const ripple = ((row * 7919) % 1000) / 1e5;
    const currentA = loaded ? -20 - ripple : 0;
    const voltageV = loaded ? 13.1 - inHourS * 5e-5 - ripple : 13.2 + ripple;
    text += `${(row + ripple).toFixed(3)},${currentA.toFixed(4)},${voltageV.toFixed(4)},${(25 + inHourS / 1000).toFixed(2)}\n`;
  }
  return text;
}
