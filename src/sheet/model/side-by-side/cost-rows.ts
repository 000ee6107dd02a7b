import { type DeliveredCost, deliveredCostPerKwh } from '../../../calc/delivered-cost.ts';
import { costBound, remedyCosts } from '../../../grading/remedy-costs.ts';
import { formatDay } from '../../../text/format-day.ts';
import { formatPrice } from '../../../text/format-unit.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow } from '../sheet.ts';
import { cell, type GridCell, gridRow, noCell, noteOf } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

/** The price that counts, and what a delivered kilowatt-hour costs with it, as found and after remedies. */
export function costRows(columns: readonly PackColumn[]): GridRow[] {
  const row = (id: 'price' | 'cost' | 'afterOutside' | 'afterAll', cellOf: (column: PackColumn) => GridCell) =>
    gridRow({ id, group: say.groups.cost, label: say.labels[id], cells: columns.map(cellOf) });
  return [
    row('price', priceCell),
    row('cost', (column) => costCell(column)),
    row('afterOutside', (column) => afterCell(column, 'outside')),
    row('afterAll', (column) => afterCell(column, 'all')),
  ];
}

/** As found; null without a price or without a complete run. */
export function foundCost(column: PackColumn, remedyPrice = 0): DeliveredCost | null {
  const gentle = column.capacity?.gentle ?? null;
  if (column.price === null || gentle === null) return null;
  const { nominalVoltageV } = column.record.nameplate;
  const { price } = column.price;
  try {
    return deliveredCostPerKwh({ price, remedyPrice, ...gentle, nominalVoltageV });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function priceCell({ price }: PackColumn): GridCell {
  if (price === null) return noCell(say.noPrice);
  return cell(
    formatPrice(price.price, price.currency ?? undefined),
    noteOf([
      price.label,
      price.pricedOn === null ? say.noDay : say.onDay(formatDay(price.pricedOn)),
      price.options.length === 0 ? null : say.with(price.options.map(({ label }) => label)),
      price.leftOut.length === 0 ? null : say.leftOut(price.leftOut),
    ]),
  );
}

function costCell(column: PackColumn, remedyPrice = 0): GridCell {
  if (column.price === null) return noCell(say.noPrice);
  if (column.capacity === null) return noCell(say.outOfReach);
  if (column.capacity.gentle === null) return noCell(column.capacity.runs.length === 0 ? say.notTested : say.noRun);
  const cost = foundCost(column, remedyPrice);
  if (cost === null) return noCell(say.notMeasured);
  return cell(
    formatPrice(cost.costPerKwh, column.price.currency ?? undefined),
    cost.basis === 'measured' ? null : say.nominal,
  );
}

function afterCell(column: PackColumn, reach: 'outside' | 'all'): GridCell {
  const found = costCell(column);
  if (column.price === null || foundCost(column) === null) return found;
  const remedies = column.grading.remedies.filter(
    (remedy) => remedy.ruledOut === undefined && (reach === 'all' || remedy.reach === 'outside'),
  );
  if (remedies.length === 0) return withNote(found, reach === 'all' ? say.noRemedy : say.noOutside);
  // In the currency of the price that is counted with, which need not be the nameplate's.
  const cost = remedyCosts({ ...column, currency: column.price.currency })[reach];
  const { price, unpricedIds, otherCurrencyIds } = cost;
  if (price === null) {
    const unpriced = unpricedIds.length === 0 ? null : say.noRemedyPrice;
    return cell(say.none, noteOf([unpriced, otherCurrencyIds.length === 0 ? null : say.otherCurrency]));
  }
  const after = costCell(column, price);
  const bound = costBound(cost);
  return withNote(
    bound === 'atLeast' ? { ...after, text: say.atLeast(after.text) } : after,
    bound === 'ifNeeded' ? say.ifNeeded : null,
    unpricedIds.length === 0 ? null : say.unpriced(unpricedIds.length),
    otherCurrencyIds.length === 0 ? null : say.inOtherCurrency(otherCurrencyIds.length),
  );
}

function withNote({ text, note }: GridCell, ...more: (string | null)[]): GridCell {
  return cell(text, noteOf([note, ...more]));
}
