import { sideBySideWords as say } from '../../text/side-by-side.ts';
import type { GridBlock, Sheet } from '../model/sheet.ts';
import { type CsvValue, csvText } from './csv-text.ts';

/**
 * A comparison as CSV: a row a line of the grid, a column a pack, what is said beside a figure in brackets after it;
 * last how each sample was obtained, and then the cautions, which hold for every pack and stand with none. The rows of
 * the paper are taken as it has them.
 *
 * Throws  RangeError if the paper has no grid.
 * Check   tests/sheet/csv/comparison-csv.test.ts
 */
export function comparisonCsv({ head, sections }: Pick<Sheet, 'head' | 'sections'>): string {
  const grid = sections.flatMap(({ blocks }) => blocks).find((block) => block.kind === 'grid');
  if (grid === undefined) throw new RangeError('comparisonCsv: the paper must have a grid, got none');
  const disclosures = sections
    .filter(({ id }) => id === 'disclosure')
    .flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'list' ? block.items.map(({ detail }) => detail ?? null) : [])),
    );
  const cautions = [
    head.caution,
    ...sections
      .filter(({ id }) => id === 'cautions')
      .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'list' ? block.items : [])))
      .map(({ text }) => text),
  ];
  return csvText([
    [say.csv.group, say.csv.line, ...grid.columns.map(({ title }) => title)],
    [null, say.csv.marks, ...grid.columns.map(({ mark }) => mark)],
    ...grid.rows.map(rowValues),
    [null, say.csv.disclosure, ...disclosures],
    ...cautions.map((text) => [say.csv.caution, text, ...grid.columns.map(() => null)]),
  ]);
}

function rowValues({ group, label, cells }: GridBlock['rows'][number]): CsvValue[] {
  return [group, label, ...cells.map(({ text, note }) => (note === null ? text : say.csv.withNote(text, note)))];
}
