import { useId } from 'preact/hooks';
import { LOG_QUANTITIES, type LogMapping } from '../../logs/log-mapping.ts';
import { mappingWords as say } from '../../text/logs/mapping.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { unitsOf, withCounts, withQuantity, withUnit } from './changed-mapping.ts';
import { columnName, unitWords } from './mapping-read.tsx';

interface ColumnChangeProps {
  mapping: LogMapping;
  place: number;
  /** Its cell in the first row, so that a column without a name is known by something. */
  first: string;
  onChange: (mapping: LogMapping) => void;
}

/** What one column holds and in which unit. */
export function ColumnChange({ mapping, place, first, onChange }: ColumnChangeProps) {
  const id = useId();
  const column = mapping.columns[place];
  if (column === undefined) return null;
  const units = column.quantity === 'time' ? [] : unitsOf(column.quantity);
  return (
    <fieldset class="log-column">
      <legend>
        {columnName(mapping.layout.columnNames, place)} <span class="small muted">{first}</span>
      </legend>
      <div class="pair">
        <SelectField
          id={`${id}-holds`}
          label={say.holds}
          choices={LOG_QUANTITIES.map((one) => ({ id: one, text: say.quantities[one] }))}
          chosen={column.quantity}
          onChoose={(quantity) => onChange(withQuantity(mapping, place, quantity))}
        />
        {units.length > 0 && (
          <SelectField
            id={`${id}-unit`}
            label={say.unit}
            choices={units.map((unit) => ({ id: unit, text: unitWords(unit) }))}
            chosen={column.unit}
            onChoose={(unit) => onChange(withUnit(mapping, place, unit))}
          />
        )}
        {column.counts !== null && (
          <SelectField
            id={`${id}-counts`}
            label={say.counts}
            choices={(['out', 'in', 'net'] as const).map((one) => ({ id: one, text: say.counters[one] }))}
            chosen={column.counts}
            onChoose={(counts) => onChange(withCounts(mapping, place, counts))}
          />
        )}
      </div>
    </fieldset>
  );
}
