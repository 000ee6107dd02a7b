import type { Block } from '../../sheet/model/sheet.ts';
import { resultWords } from '../../text/live-tests/result.ts';
import { SheetBlock } from '../../ui/sheet/sheet-block.tsx';
import '../../ui/sheet/result.css';

/** What tests come to, in the same blocks as on the sheet. Nothing where there is nothing to say. */
export function ResultView({ blocks }: { blocks: readonly Block[] }) {
  if (blocks.length === 0) return null;
  return (
    <section class="results" aria-label={resultWords.results}>
      <h2>{resultWords.results}</h2>
      {blocks.map((block, place) => (
        <SheetBlock key={block.kind === 'result' ? block.id : place} block={block} photo={() => null} />
      ))}
    </section>
  );
}
