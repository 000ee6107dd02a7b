import type { AnswersBlock, FiguresBlock, ListBlock, TableBlock } from '../../sheet/model/sheet.ts';
import { Lid } from '../lid.tsx';

export function FiguresPart({ block }: { block: FiguresBlock }) {
  return (
    <dl class="sheet-figures">
      {block.figures.map(({ label, value, note }) => (
        <div key={label}>
          <dt class="small muted">{label}</dt>
          <dd>{value}</dd>
          {note && <dd class="small muted note">{note}</dd>}
        </div>
      ))}
    </dl>
  );
}

export function TablePart({ block }: { block: TableBlock }) {
  return (
    <table class="sheet-table">
      <tbody>
        {block.rows.map(({ label, value, note }) => (
          <tr key={label}>
            <th scope="row" class="muted">
              {label}
            </th>
            <td>
              {value}
              {note && <span class="small muted"> {note}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function ListPart({ block }: { block: ListBlock }) {
  return (
    <ul class="sheet-list">
      {block.items.map(({ text, detail }) => (
        <li key={text}>
          {text}
          {detail && <span class="small muted"> {detail}</span>}
        </li>
      ))}
    </ul>
  );
}

export function QuotePart({ label, text }: { label: string; text: string }) {
  return (
    <blockquote class="sheet-quote">
      <p class="small muted">{label}</p>
      <p class="own-words">{text}</p>
    </blockquote>
  );
}

export function AnswersPart({ block }: { block: AnswersBlock }) {
  return (
    <>
      <h3>{block.zoneTitle}</h3>
      <ul class="sheet-answers">
        {block.rows.map((row) => (
          <li key={row.itemId}>
            <Lid outcome={row.glyph} widthPx={20} />
            <span>
              {row.title}
              {row.marks.map((mark) => (
                <span key={mark} class="small muted">
                  {' '}
                  · {mark}
                </span>
              ))}
              {row.note && <QuotePart label={row.note.label} text={row.note.text} />}
            </span>
            <span class="small muted">{row.outcome}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
