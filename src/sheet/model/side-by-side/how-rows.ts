import { PROTECTION_KINDS } from '../../../grading/side-by-side/side-by-side.ts';
import { capital, ROUTE_WORDS } from '../../../text/sheet.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import { disclosureOf } from '../disclosure.ts';
import type { GridRow } from '../sheet.ts';
import { markOf, standingOf } from '../sheet-standing.ts';
import { cell, type GridCell, gridRow, noteOf } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

/** Each protection against each pack: what it did when it was tried. */
export function protectionRows(columns: readonly PackColumn[]): GridRow[] {
  return PROTECTION_KINDS.map((kind) =>
    gridRow({
      id: `protection:${kind}`,
      group: say.groups.protections,
      label: say.protections[kind],
      cells: columns.map(({ protections }) => {
        const tried = protections.find((protection) => protection.kind === kind);
        if (tried === undefined || tried.trialCount === 0) return cell(say.protectionStates.notTested);
        const { state, sides, trialCount, heatOnlyCount } = tried;
        return cell(
          say.protectionStates[state],
          noteOf([
            sides === null ? null : say.sides[sides],
            say.trials(trialCount),
            heatOnlyCount === 0 ? null : say.heatOnly(heatOnlyCount, trialCount),
          ]),
        );
      }),
    }),
  );
}

/** Route, checklist, how much is settled, how the sheet stands and how the sample was obtained. */
export function howRows(columns: readonly PackColumn[]): GridRow[] {
  type Row = 'route' | 'checklist' | 'settled' | 'sheet' | 'obtained';
  const row = (id: Row, cellOf: (column: PackColumn) => GridCell) =>
    gridRow({ id, group: say.groups.how, label: say.labels[id], cells: columns.map(cellOf) });
  return [
    row('route', ({ grading }) =>
      cell(capital(ROUTE_WORDS[grading.route]), say.routeAsked(grading.askedCount, grading.itemCount)),
    ),
    row('checklist', ({ definition }) => cell(say.checklist(definition.id, definition.version))),
    row('settled', ({ grading }) => cell(say.settled(grading.settledCount, grading.askedCount))),
    row('sheet', ({ record, isAsSealed }) =>
      cell(capital(markOf(standingOf({ record }))), isAsSealed ? null : say.notAsSealed),
    ),
    row('obtained', ({ record }) => {
      const { obtained, commission } = disclosureOf(record);
      return cell(capital(obtained), noteOf([commission]));
    }),
  ];
}
