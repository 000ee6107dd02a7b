import { formatDay } from '../../text/format-day.ts';
import { sheetWords } from '../../text/sheet.ts';
import { afterwardsWords as words } from '../../text/sheet-record.ts';
import type { Block, TableBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** What became of the sample. An opened pack is no longer the tested type, closed again or not. */
export function afterwardsBlocks({ record }: SheetContext): Block[] {
  const { fate, on, cells, where, note } = record.afterwards;
  const rows: TableBlock['rows'] = [
    ...(fate === undefined ? [] : [{ label: words.labels.fate, value: words.fate[fate] }]),
    ...(on === undefined ? [] : [{ label: words.labels.on, value: formatDay(on) }]),
    ...(cells === undefined ? [] : [{ label: words.labels.cells, value: words.cells[cells] }]),
    ...(where === undefined ? [] : [{ label: words.labels.where, value: where }]),
  ];
  const closed = fate === 'closed-again';
  return [
    rows.length === 0 ? { kind: 'paragraph', text: words.none, tone: 'plain' } : { kind: 'table', rows },
    ...(note?.trim() ? [{ kind: 'quote', label: words.note, text: note.trim() } satisfies Block] : []),
    ...(closed || record.state !== null
      ? [
          {
            kind: 'paragraph',
            text: closed ? sheetWords.cautions.closedAgain : sheetWords.cautions.opened,
            tone: 'caution',
          } satisfies Block,
        ]
      : []),
  ];
}
