/** "underlid-Wren-24-sample-1-revision-1-findings.csv": letters, digits and dashes, as every phone takes them. */
export function publishedName(title: string, revision: number | null, end: { what: string; ending: string }): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const parts = ['underlid', plain, revision === null ? '' : `revision-${revision}`, end.what];
  return `${parts.filter((part) => part !== '').join('-')}.${end.ending}`;
}
