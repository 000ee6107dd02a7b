/** One line of the report: what was measured, what it is held against in the same run, and measured ÷ yardstick. */
export interface BenchRow {
  what: string;
  measured: string;
  yardstick: string | null;
  ratio: number | null;
}

const HEAD = ['what', 'measured', 'yardstick, same run', 'ratio'];

/** The rows as columns of plain text; what has no yardstick shows a dash. */
export function plainTable(rows: readonly BenchRow[]): string {
  const cells = rows.map(({ what, measured, yardstick, ratio }) => [
    what,
    measured,
    yardstick ?? '–',
    ratio === null ? '–' : ratio.toFixed(2),
  ]);
  const widths = HEAD.map((head, column) => Math.max(head.length, ...cells.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd();
  return [line(HEAD), line(widths.map((width) => '─'.repeat(width))), ...cells.map(line)].join('\n');
}
