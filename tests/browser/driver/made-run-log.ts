/** Figures of the log below: an invented pack, not measured. */
export const MADE_RUN = { rowsAbove: 5, restMin: 40, runMin: 300, currentA: 20, chargeAh: 100 } as const;

/**
 * A log as a test bench of a German shop might write it: byte order mark, preamble, semicolons, decimal commas, CRLF, one
 * line of words among the rows. A row a minute: 40 min at rest, 300 min at −20 A over a plateau and a knee, then 10 min
 * at rest. Its time column says no unit.
 */
export function madeRunLog(): string {
  const lines = ['Prüfstand 3', 'Probe;Graureiher 12', 'Beginn;24.11.2026 08:15', '', NAMES];
  const row = (minute: number, voltageV: number, currentA: number, degC: number) =>
    lines.push([String(minute), comma(voltageV, 3), comma(currentA, 2), comma(degC, 1)].join(';'));
  let minute = 0;
  for (; minute < MADE_RUN.restMin; minute++) row(minute, 13.46 - 0.06 * (1 - Math.exp(-minute / 8)), 0, 21.4);
  lines.push('Pause vom Bediener beendet');
  for (let at = 0; at <= MADE_RUN.runMin; at++, minute++) {
    const share = at / MADE_RUN.runMin;
    const voltageV = 13.18 - 0.32 * share - 2.9 * Math.exp((share - 1) * 38);
    row(minute, voltageV, -MADE_RUN.currentA, 21.4 + 3.1 * share);
  }
  for (let at = 0; at < 10; at++, minute++) row(minute, 11.9 + 0.05 * at, 0, 24.4);
  return `\ufeff${lines.join('\r\n')}\r\n`;
}

const NAMES = 'Zeit;Spannung [V];Strom [A];Zelltemperatur [°C]';

function comma(value: number, decimals: number): string {
  return value.toFixed(decimals).replace('.', ',');
}
