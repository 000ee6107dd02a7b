import type { ColumnUse, LogMapping } from '../../logs/log-mapping.ts';
import { mappingWords as say } from '../../text/logs/mapping.ts';
import { DATE_FORMATS, timeIsCounted, turnedRound } from './changed-mapping.ts';
import type { LogRead } from './log-in-hand.ts';

/** How the log was read: every column that is used with its unit and why, and the sign of current in words. */
export function MappingRead({ read, onChange }: { read: LogRead; onChange: (mapping: LogMapping) => void }) {
  const { mapping, summary } = read;
  const { columns, layout } = mapping;
  const used = [...columns.entries()].filter(([, { quantity }]) => quantity !== 'ignored');
  const unused = [...columns.entries()].filter(([, { quantity }]) => quantity === 'ignored');
  const hasCurrent = columns.some(({ quantity }) => quantity === 'current');
  const hasVoltage = columns.some(({ quantity }) => quantity === 'voltage');
  return (
    <section class="stack">
      <h2>{say.title}</h2>
      {summary.refused !== undefined && (
        <p class="notice" role="alert">
          {say.refusals[summary.refused]}
        </p>
      )}
      {used.length > 0 && (
        <dl class="log-columns">
          {used.map(([place, column]) => (
            <div key={place} class={isSure(mapping, column) ? '' : 'unsure'}>
              <dt>
                {say.quantities[column.quantity]}
                {column.counts !== null && <span class="small muted"> {say.counters[column.counts]}</span>}
              </dt>
              <dd>
                {isDated(mapping, column)
                  ? say.writtenAs(columnName(layout.columnNames, place), shownUnit(mapping, place))
                  : say.readAs(columnName(layout.columnNames, place), shownUnit(mapping, place), why(column))}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {unused.length > 0 && (
        <p class="small muted">{say.leftOut(unused.map(([place]) => columnName(layout.columnNames, place)))}</p>
      )}
      {hasCurrent ? (
        <div class={mapping.signBecause === 'cannotTell' ? 'notice sign' : 'notice calm sign'}>
          <p>{`${say.signIs[mapping.outIs]}${say.signBecause[mapping.signBecause]}`}</p>
          <button type="button" class="button" onClick={() => onChange(turnedRound(mapping))}>
            {say.turnRound}
          </button>
        </div>
      ) : (
        hasVoltage && (
          <p class="notice">
            {say.noCurrent} {say.currentLeftOut}
          </p>
        )
      )}
      {hasCurrent && !hasVoltage && <p class="notice">{say.noVoltage}</p>}
    </section>
  );
}

/** What nothing in the log says, or something says otherwise, has to be looked at. */
function isSure(mapping: LogMapping, column: ColumnUse): boolean {
  const { unit, unitFrom } = column;
  return unit === '' || isDated(mapping, column) || (unitFrom !== 'assumed' && unitFrom !== 'numbers');
}

export function columnName(names: readonly string[], place: number): string {
  return say.column(place + 1, names[place] ?? '');
}

/** Time and date say how they are written in place of a unit. */
function shownUnit({ columns, timeFormat }: LogMapping, place: number): string {
  const column = columns[place];
  if (column?.quantity === 'time') return say.timeFormats[timeFormat].toLowerCase();
  if (column === undefined) return '';
  return column.quantity === 'date' ? unitWords(column.unit).toLowerCase() : column.unit;
}

/** A unit as it is; of a date, how it is written. */
export function unitWords(unit: string): string {
  const date = DATE_FORMATS.find((format) => format === unit);
  return date === undefined ? unit : say.timeFormats[date];
}

/** A clock or a date has a way of writing in place of a unit. */
function isDated(mapping: LogMapping, { quantity }: ColumnUse): boolean {
  return quantity === 'date' || (quantity === 'time' && !timeIsCounted(mapping));
}

/** Words and steps have no unit of which to say where it came from. */
function why({ unit, unitFrom }: ColumnUse): string {
  return unit === '' ? '' : say.unitFrom[unitFrom];
}
