import type { LogSeparator } from './log-layout.ts';

/** Cells of one line; a separator inside double quotes does not count. A run of spaces is one separator. */
export function splitLine(line: string, separator: LogSeparator): string[] {
  const text = separator === ' ' ? line.trim().replace(/ +/g, ' ') : line;
  if (!text.includes('"')) return text.split(separator);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const character of text) {
    if (character === '"') quoted = !quoted;
    if (character === separator && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += character;
  }
  cells.push(cell);
  return cells;
}
