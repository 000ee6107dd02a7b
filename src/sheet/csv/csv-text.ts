export type CsvValue = string | number | null;

/**
 * A text that begins so is taken for a formula by spreadsheets; some drop the space in front of it, or read full-width
 * signs as the narrow ones. Source: OWASP, "CSV Injection".
 */
const FORMULA_START = /^(?:[\t\r]|\s*[=+\-@\uff1d\uff0b\uff0d\uff20])/;
const MUST_BE_QUOTED = /[",\r\n]/;

/**
 * Rows as comma-separated values, each line ended by CRLF, the last one too. A text that a spreadsheet would take for a
 * formula gets an apostrophe in front; a number is written in full, with a point, and stays a number.
 *
 * Shape   null is an empty field; a row of a single empty field is written as "" so that it is not a blank line.
 * Throws  RangeError if a number is not finite.
 * Source  RFC 4180, section 2
 * Check   tests/sheet/csv/csv-text.test.ts
 */
export function csvText(rows: readonly (readonly CsvValue[])[]): string {
  return rows.map((row) => `${lineOf(row)}\r\n`).join('');
}

function lineOf(row: readonly CsvValue[]): string {
  const line = row.map(fieldOf).join(',');
  return line === '' ? '""' : line;
}

function fieldOf(value: CsvValue): string {
  if (value === null) return '';
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`csvText: numbers must be finite, got ${value}`);
    return String(value);
  }
  const harmless = FORMULA_START.test(value) ? `'${value}` : value;
  return MUST_BE_QUOTED.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
