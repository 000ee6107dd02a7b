/** Our choice, because the name with revision and end then stays well under the 255 bytes that file systems take. */
const MOST_TITLE_LETTERS = 100;

interface FileNameParts {
  /** What it is of, the pack's name as a rule. */
  title: string;
  /** Of the closed sheet; null of what is not made of one. */
  revision: number | null;
  /** What the file holds, where its ending does not say so. */
  what: string | null;
  ending: string;
}

/**
 * "underlid-Wren-24-sample-1-revision-1-findings.csv": letters, digits and dashes, as every phone, mail and video program
 * takes them.
 *
 * Check   tests/app/file-name.test.ts
 */
export function fileName({ title, revision, what, ending }: FileNameParts): string {
  const plain = plainOf(title) || 'pack';
  const parts = [plain, ...(revision === null ? [] : [`revision-${revision}`]), ...(what === null ? [] : [what])];
  return `underlid-${parts.join('-')}.${ending}`;
}

function plainOf(title: string): string {
  return title
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+/, '')
    .slice(0, MOST_TITLE_LETTERS)
    .replace(/-+$/, '');
}
