import * as v from 'valibot';
import { DECIMAL_MARKS, LOG_ENCODINGS, LOG_SEPARATORS } from '../../logs/log-layout.ts';
import { LOG_QUANTITIES, type LogMapping, OUT_IS, SIGN_BECAUSE, TIME_FORMATS } from '../../logs/log-mapping.ts';

const lineNumber = v.pipe(v.number(), v.integer(), v.minValue(1));

/** A mapping as this version of the reader understands it. What is stored with a run may come from another one. */
const mappingSchema = v.object({
  layout: v.object({
    encoding: v.picklist(LOG_ENCODINGS),
    byteOrderMarkBytes: v.picklist([0, 2, 3]),
    lineEnd: v.picklist(['lf', 'cr']),
    separator: v.picklist(LOG_SEPARATORS),
    decimalMark: v.picklist(DECIMAL_MARKS),
    commentMark: v.nullable(v.string()),
    headerLine: v.nullable(lineNumber),
    unitsLine: v.nullable(lineNumber),
    firstDataLine: lineNumber,
    columnNames: v.array(v.string()),
    columnUnits: v.array(v.string()),
  }),
  columns: v.array(
    v.object({
      quantity: v.picklist(LOG_QUANTITIES),
      unit: v.string(),
      scale: v.pipe(v.number(), v.finite()),
      offset: v.exactOptional(v.pipe(v.number(), v.finite())),
      unitFrom: v.picklist(['name', 'unitsRow', 'numbers', 'assumed', 'user']),
      counts: v.nullable(v.picklist(['out', 'in', 'net'])),
    }),
  ),
  timeFormat: v.picklist(TIME_FORMATS),
  outIs: v.picklist(OUT_IS),
  signBecause: v.picklist(SIGN_BECAUSE),
});

/** The mapping a run was read with, if this version can read with it; else null, and it is found anew. */
export function keptMapping(stored: unknown): LogMapping | null {
  const checked = v.safeParse(mappingSchema, stored);
  if (!checked.success) return null;
  const mapping: LogMapping = checked.output;
  return mapping.columns.length === mapping.layout.columnNames.length ? mapping : null;
}
