/** Letters, digits and dashes only, so that every phone and mail program takes the name. */
export function sheetFileName(title: string, revision: number | null, ending: 'pdf' | 'json'): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const name = plain === '' ? 'underlid-sheet' : `underlid-${plain}`;
  return `${name}${revision === null ? '' : `-revision-${revision}`}.${ending}`;
}
