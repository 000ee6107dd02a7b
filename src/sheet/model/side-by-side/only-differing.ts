import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow, Sheet } from '../sheet.ts';

/**
 * The same paper with those rows of its grids alone in which the packs differ, and how many that hides. Protections
 * always stay: one that none was tried for, or that acts in none, must not go unseen because all are alike.
 */
export function onlyDiffering(sheet: Sheet): { paper: Sheet; hiddenCount: number } {
  const sections = sheet.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((block) =>
      block.kind === 'grid' ? { ...block, rows: block.rows.filter(staysShown) } : block,
    ),
  }));
  return { paper: { ...sheet, sections }, hiddenCount: rowCount(sheet) - rowCount({ sections }) };
}

function staysShown({ differs, group }: GridRow): boolean {
  return differs || group === say.groups.protections;
}

function rowCount({ sections }: Pick<Sheet, 'sections'>): number {
  const blocks = sections.flatMap((section) => section.blocks);
  return blocks.reduce((count, block) => count + (block.kind === 'grid' ? block.rows.length : 0), 0);
}
