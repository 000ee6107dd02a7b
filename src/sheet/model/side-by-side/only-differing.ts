import type { Sheet } from '../sheet.ts';

/** The same paper with those rows of its grids alone in which the packs differ. */
export function onlyDiffering(sheet: Sheet): Sheet {
  return {
    ...sheet,
    sections: sheet.sections.map((section) => ({
      ...section,
      blocks: section.blocks.map((block) =>
        block.kind === 'grid' ? { ...block, rows: block.rows.filter(({ differs }) => differs) } : block,
      ),
    })),
  };
}
