/**
 * Reads a number as a person types it: decimal point or decimal comma, spaces between groups, a true minus sign.
 * An emptied box is "not filled in", never 0 (Number('') would be 0). `null` stands for text that is not a number.
 */
export function readNumber(text: string): number | 'empty' | null {
  const plain = text.replace(/[\s\u00a0\u202f]/g, '').replace('\u2212', '-');
  if (plain === '') return 'empty';
  if (!/^[-+]?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain)) return null;
  const value = Number(plain.replace(',', '.'));
  return Number.isFinite(value) ? value : null;
}
