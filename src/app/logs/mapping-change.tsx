import { useId, useState } from 'preact/hooks';
import { DECIMAL_MARKS, LOG_SEPARATORS } from '../../logs/log-layout.ts';
import { OUT_IS, TIME_FORMATS } from '../../logs/log-mapping.ts';
import { mappingWords as say } from '../../text/logs/mapping.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { withSign, withTimeFormat } from './changed-mapping.ts';
import { ColumnChange } from './column-change.tsx';
import type { LogInHand, LogRead } from './log-in-hand.ts';
import { RowsPreview } from './rows-preview.tsx';

/** Lines above the rows, in which the names may stand; long ones are shown by their start. */
const LONGEST_LINE = 60;
const NO_HEADER = 'none';

/** Everything about how the log is read, to be changed by hand. Open at once where nothing could be read. */
export function MappingChange({ log, read }: { log: LogInHand; read: LogRead }) {
  const refused = read.summary.refused !== undefined;
  const [open, setOpen] = useState(refused);
  return (
    <details class="mapping" open={open || refused} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="log-summary">
        <strong>{say.change}</strong>
      </summary>
      {(open || refused) && (
        <div class="stack">
          <p class="small muted">{say.changeLead}</p>
          <h3>{say.firstRows}</h3>
          <RowsPreview read={read} />
          <Columns log={log} read={read} />
          <Layout log={log} read={read} />
        </div>
      )}
    </details>
  );
}

function Columns({ log, read }: { log: LogInHand; read: LogRead }) {
  const { mapping, preview } = read;
  const { columns } = mapping;
  const places = [...columns.keys()];
  const ignored = places.filter((place) => columns[place]?.quantity === 'ignored');
  const used = places.filter((place) => !ignored.includes(place));
  const column = (place: number) => (
    <ColumnChange
      key={place}
      mapping={mapping}
      place={place}
      first={preview.rows[0]?.cells[place] ?? ''}
      onChange={(next) => void log.change(next)}
    />
  );
  return (
    <>
      <h3>{say.columns}</h3>
      {used.map(column)}
      {ignored.length > 0 && (
        <details open={used.length < 3}>
          <summary class="log-summary">{say.unused(ignored.length)}</summary>
          <div class="stack">{ignored.map(column)}</div>
        </details>
      )}
      {columns.some(({ quantity }) => quantity === 'current') && (
        <ChoiceField
          label={say.sign}
          choices={OUT_IS.map((one) => ({ id: one, text: say.signs[one] }))}
          chosen={mapping.outIs}
          onChoose={(outIs) => void log.change(withSign(mapping, outIs))}
        />
      )}
    </>
  );
}

function Layout({ log, read }: { log: LogInHand; read: LogRead }) {
  const id = useId();
  const { mapping } = read;
  const { layout, timeFormat } = mapping;
  return (
    <>
      <h3>{say.layout}</h3>
      <SelectField
        id={`${id}-time`}
        label={say.timeFormat}
        choices={TIME_FORMATS.map((one) => ({ id: one, text: say.timeFormats[one] }))}
        chosen={timeFormat}
        onChoose={(one) => void log.change(withTimeFormat(mapping, one))}
      />
      <p class="small muted">{say.layoutLead}</p>
      <SelectField
        id={`${id}-separator`}
        label={say.separator}
        choices={LOG_SEPARATORS.map((one) => ({ id: one, text: say.separators[one] }))}
        chosen={layout.separator}
        onChoose={(separator) => void log.layOut({ separator })}
      />
      <ChoiceField
        label={say.decimalMark}
        choices={DECIMAL_MARKS.map((one) => ({ id: one, text: say.decimalMarks[one] }))}
        chosen={layout.decimalMark}
        onChoose={(decimalMark) => void log.layOut({ decimalMark })}
      />
      <SelectField
        id={`${id}-header`}
        label={say.headerLine}
        choices={headerChoices(read)}
        chosen={layout.headerLine === null ? NO_HEADER : String(layout.headerLine)}
        onChoose={(line) => void log.layOut({ headerLine: line === NO_HEADER ? null : Number(line) })}
      />
      <button type="button" class="button" onClick={() => void log.findAnew()}>
        {say.guess}
      </button>
    </>
  );
}

/** The lines above the first row, and the first row itself, which may be names taken for readings. */
function headerChoices({ preview, mapping }: LogRead): { id: string; text: string }[] {
  const { separator, headerLine } = mapping.layout;
  const rows = preview.rows.slice(0, 2).map(({ line, cells }) => ({ line, text: cells.join(separator) }));
  const lines = [...preview.above, ...rows]
    .filter(({ text, line }) => text.trim() !== '' || line === headerLine)
    .map(({ line, text }) => ({ id: String(line), text: say.lineIs(line, text.slice(0, LONGEST_LINE)) }));
  const known = headerLine === null || lines.some(({ id }) => id === String(headerLine));
  const own = known ? [] : [{ id: String(headerLine), text: say.aLine(headerLine) }];
  return [{ id: NO_HEADER, text: say.noHeader }, ...own, ...lines];
}
