import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow, Sheet } from '../sheet.ts';

/**
 * The same paper with those rows of its grids alone in which the packs differ, saying in its head how many that leaves
 * out. Protections
 * always stay: one that none was tried for, or that acts in none, must not go unseen because all are alike.
 */
export function onlyDiffering(sheet: Sheet): { paper: Sheet; hiddenCount: number } {
  const sections = sheet.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((block) =>
      block.kind === 'grid' ? { ...block, rows: block.rows.filter(staysShown) } : block,
    ),
  }));
  const hiddenCount = rowCount(sheet) - rowCount({ sections });
  return { paper: hiddenCount === 0 ? sheet : { ...sheet, ...headsSaying(sheet, hiddenCount), sections }, hiddenCount };
}

function headsSaying({ head, standingMark }: Sheet, hiddenCount: number): Pick<Sheet, 'head' | 'standingMark'> {
  return {
    head: { ...head, line: say.countHidden(head.line, hiddenCount) },
    standingMark: say.standingHidden(standingMark),
  };
}

function staysShown({ differs, group }: GridRow): boolean {
  return differs || group === say.groups.protections;
}

function rowCount({ sections }: Pick<Sheet, 'sections'>): number {
  const blocks = sections.flatMap((section) => section.blocks);
  return blocks.reduce((count, block) => count + (block.kind === 'grid' ? block.rows.length : 0), 0);
}
