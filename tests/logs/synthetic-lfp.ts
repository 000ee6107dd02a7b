/** An invented LFP discharge, made for these tests: not measured, no real cell. */
export interface SyntheticRow {
  timeS: number;
  currentA: number;
  voltageV: number;
}

/**
 * Voltage of an invented LFP cell at a share `x` of its charge: a short fall from full, a long gentle plateau, and a knee
 * over the last tenth down to 2.0 V.
 */
export function syntheticCellV(x: number): number {
  const knee = x > 0.9 ? 1.18 * ((x - 0.9) / 0.1) ** 3 : 0;
  return 3.26 - 0.08 * x + 0.12 * Math.exp(-60 * x) - knee;
}

/** A discharge of 3600 s of a whole pack, up to a share of its charge, a row every ten seconds; rest before it. */
export function syntheticDischarge({
  cells,
  until = 1,
  currentA = 50,
}: {
  cells: number;
  until?: number;
  currentA?: number;
}) {
  const rows: SyntheticRow[] = [{ timeS: 0, currentA: 0, voltageV: cells * 3.4 }];
  for (let timeS = 10; timeS <= 3600 * until; timeS += 10) {
    rows.push({ timeS, currentA, voltageV: cells * syntheticCellV(timeS / 3600) });
  }
  return rows;
}

/** Rows after the last one: each ten seconds later. */
export function followed(rows: readonly SyntheticRow[], after: readonly Omit<SyntheticRow, 'timeS'>[]): SyntheticRow[] {
  const lastS = rows.at(-1)?.timeS ?? 0;
  return [...rows, ...after.map((row, place) => ({ timeS: lastS + 10 * (place + 1), ...row }))];
}

export function asCsv(rows: readonly SyntheticRow[], decimals = 4): string {
  const lines = rows.map((row) => `${row.timeS},${row.currentA.toFixed(4)},${row.voltageV.toFixed(decimals)}`);
  return `Time [s],Current [A],Voltage [V]\n${lines.join('\n')}\n`;
}
