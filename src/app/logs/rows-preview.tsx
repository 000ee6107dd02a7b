import { mappingWords as say } from '../../text/logs/mapping.ts';
import type { LogRead } from './log-in-hand.ts';
import { columnName, unitWords } from './mapping-read.tsx';

const ROWS = 6;
const RAW_LINES = 12;
const LONGEST_LINE = 200;

/** The first rows as they are cut into cells, what each column was taken for above them. Scrolls sideways. */
export function RowsPreview({ read }: { read: LogRead }) {
  const { columns, layout } = read.mapping;
  const rows = read.preview.rows.slice(0, ROWS);
  if (columns.length === 0) return <RawLines read={read} />;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section class="log-rows" aria-label={say.firstRows} tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col">{say.line}</th>
            {columns.map(({ quantity, unit }, place) => (
              <th key={place} scope="col">
                {columnName(layout.columnNames, place)}
                <br />
                <span class="muted">{[say.quantities[quantity], unitWords(unit)].filter(Boolean).join(', ')}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ line, cells }) => (
            <tr key={line}>
              <th scope="row">{line}</th>
              {columns.map((_, place) => (
                <td key={place}>{cells[place] ?? ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Where nothing could be cut into cells, the lines as they are. */
function RawLines({ read: { preview, mapping } }: { read: LogRead }) {
  const { separator } = mapping.layout;
  const lines = [...preview.above, ...preview.rows.map(({ line, cells }) => ({ line, text: cells.join(separator) }))];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section class="log-rows" aria-label={say.firstRows} tabIndex={0}>
      <pre class="log-raw">{lines.slice(0, RAW_LINES).map(({ text }) => `${text.slice(0, LONGEST_LINE)}\n`)}</pre>
    </section>
  );
}
