import { promisedEnergy } from '../../../calc/promised-energy.ts';
import { specificEnergyWhPerKg } from '../../../calc/specific-energy.ts';
import type { CapacityResult } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { formatMass, withUnit } from '../../../text/format-unit.ts';
import { figureIn, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';
import type { GridRow } from '../sheet.ts';
import { cell, type GridCell, gridRow, noCell, noteOf } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

type Row = 'charge' | 'energy' | 'retention' | 'mass' | 'specificEnergy';

/** Delivered against promised, what a hard rate leaves, mass, and what a kilogram delivers. */
export function testFigureRows(columns: readonly PackColumn[], units: UnitChoice): GridRow[] {
  const row = (id: Row, cellOf: (column: PackColumn) => GridCell) =>
    gridRow({ id, group: say.groups.tests, label: say.labels[id], cells: columns.map(cellOf) });
  const worked = (cellOf: (capacity: CapacityResult, column: PackColumn) => GridCell) => (column: PackColumn) =>
    column.capacity === null ? noCell(say.outOfReach) : cellOf(column.capacity, column);
  return [
    row('charge', worked(chargeCell)),
    row('energy', worked(energyCell)),
    row('retention', worked(retentionCell)),
    row('mass', (column) => massCell(column, units)),
    row('specificEnergy', worked(specificEnergyCell)),
  ];
}

function chargeCell({ delivered, runs }: CapacityResult, { record: { nameplate } }: PackColumn): GridCell {
  const chargeAh = delivered?.chargeAh ?? null;
  if (delivered === null || chargeAh === null) return noCell(runs.length === 0 ? say.notTested : say.notMeasured);
  const { ratedCapacityAh: rated } = nameplate;
  const share = delivered.chargeShareFrac;
  return cell(
    boundText(figureIn(chargeAh, 'Ah'), delivered.atLeast),
    share === null || rated === undefined ? null : say.ofPromised(sharePercent(share), figureIn(rated, 'Ah')),
  );
}

function energyCell({ delivered, runs }: CapacityResult, { record: { nameplate } }: PackColumn): GridCell {
  const energyWh = delivered?.energyWh ?? null;
  if (delivered === null || energyWh === null) return noCell(runs.length === 0 ? say.notTested : say.notMeasured);
  const promised = promisedEnergy(nameplate);
  const share = delivered.energyShareFrac;
  return cell(
    boundText(figureIn(energyWh, 'Wh'), delivered.atLeast),
    share === null || promised === null
      ? null
      : noteOf([
          say.ofPromised(sharePercent(share), figureIn(promised.energyWh, 'Wh')),
          promised.from === 'computed' ? say.computed : null,
        ]),
  );
}

function retentionCell({ retention, runs }: CapacityResult): GridCell {
  if (retention === null) return noCell(runs.length === 0 ? say.notTested : say.notMeasured);
  return cell(
    sharePercent(retention.frac),
    say.rates(figureIn(retention.hardA, 'A'), figureIn(retention.gentleA, 'A')),
  );
}

function massCell({ record: { nameplate } }: PackColumn, units: UnitChoice): GridCell {
  const { massKg, claimedMassKg } = nameplate;
  if (massKg !== undefined) return cell(formatMass(massKg, units), say.massWeighed);
  return claimedMassKg === undefined ? noCell(say.notStated) : cell(formatMass(claimedMassKg, units), say.massClaimed);
}

function specificEnergyCell({ delivered }: CapacityResult, { record: { nameplate } }: PackColumn): GridCell {
  const energyWh = delivered?.energyWh ?? null;
  const massKg = nameplate.massKg ?? nameplate.claimedMassKg;
  if (delivered === null || energyWh === null) return noCell(say.notMeasured);
  if (massKg === undefined) return noCell(say.noMass);
  const figure = withUnit(formatFixed(specificEnergyWhPerKg({ energyWh, massKg }), 0), 'Wh/kg');
  return cell(boundText(figure, delivered.atLeast), nameplate.massKg === undefined ? say.onClaimedMass : null);
}

function boundText(figure: string, atLeast: boolean): string {
  return atLeast ? say.atLeast(figure) : figure;
}
