import type { GridBlock, GridRow } from '../../sheet/model/sheet.ts';
import { gridWords } from '../../text/side-by-side.ts';
import { Lid } from '../lid.tsx';
import { useMoreBeside } from './use-more-beside.ts';

/**
 * Packs beside one another, for a phone first: each label on a line of its own above its cells. Columns that do not
 * fit scroll inside the block; names stand again under every heading, where those of the head are out of sight.
 */
export function GridPart({ block: { columns, rows } }: { block: GridBlock }) {
  const { box, scrolls, hasMore } = useMoreBeside<HTMLElement>();
  return (
    <>
      {scrolls && <p class="small muted">{gridWords.more(columns.length)}</p>}
      <section
        ref={box}
        class={hasMore ? 'sheet-grid has-more' : 'sheet-grid'}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
        tabIndex={0}
        aria-label={gridWords.scroller(columns.length)}
      >
        <table class={widthClasses(columns.length)} style={{ '--columns': columns.length }}>
          <thead>
            <tr>
              {columns.map(({ title, mark }, place) => (
                <th key={place} scope="col">
                  <span class="tape">{title}</span>
                  {mark && <span class="small muted note">{mark}</span>}
                </th>
              ))}
            </tr>
          </thead>
          {rows.map((row, place) => (
            <GridRowPart
              key={row.id}
              row={row}
              columns={columns}
              opens={row.group !== (rows[place - 1]?.group ?? null)}
            />
          ))}
        </table>
      </section>
    </>
  );
}

/** What the columns need, as grid.css gives it them. */
function widthClasses(count: number): string {
  return [count >= 3 && 'from-three', count >= 4 && 'from-four', count >= 5 && 'from-five'].filter(Boolean).join(' ');
}

/** A date may break before its year: whole it is longer than a narrow column, and would break inside a word. */
function breakable(text: string): string {
  return text.replaceAll(/(\d\u00a0\p{L}+)\u00a0(\d{4})\b/gu, '$1 $2');
}

interface GridRowPartProps {
  row: GridRow;
  columns: GridBlock['columns'];
  /** It is the first under its heading. */
  opens: boolean;
}

function GridRowPart({ row: { group, label, cells }, columns, opens }: GridRowPartProps) {
  return (
    <>
      {opens && group !== null && (
        <tbody>
          <tr class="group">
            <th colSpan={columns.length} scope="col">
              <span>{group}</span>
            </th>
          </tr>
          <tr class="again">
            {columns.map(({ title }, place) => (
              <td key={place} class="small muted">
                {title}
              </td>
            ))}
          </tr>
        </tbody>
      )}
      <tbody>
        <tr class="label">
          <th colSpan={columns.length} scope="rowgroup">
            <span class="small muted">{label}</span>
          </th>
        </tr>
        <tr class="cells">
          {cells.map(({ text, note, glyph }, place) => (
            <td key={place}>
              <span class={glyph === null ? '' : 'with-lid'}>
                {glyph !== null && <Lid outcome={glyph} widthPx={20} />}
                <span>{breakable(text)}</span>
              </span>
              {note && <span class="small muted note">{breakable(note)}</span>}
            </td>
          ))}
        </tr>
      </tbody>
    </>
  );
}
