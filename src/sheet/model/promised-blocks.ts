import { nameplateChecks } from '../../calc/nameplate-checks.ts';
import { pricePerKwh } from '../../calc/price-per-kwh.ts';
import { promisedEnergy } from '../../calc/promised-energy.ts';
import { energyDensityWhPerL, specificEnergyWhPerKg } from '../../calc/specific-energy.ts';
import { formatDay } from '../../text/format-day.ts';
import { formatFixed } from '../../text/format-number.ts';
import {
  formatBox,
  formatMass,
  formatPrice,
  formatTemperature,
  formatValue,
  withUnit,
} from '../../text/format-unit.ts';
import { nameplateCheckSentence } from '../../text/nameplate-checks.ts';
import { deliveredWords, promisedLabels } from '../../text/sheet-record.ts';
import { disclosureOf } from './disclosure.ts';
import { type DeliveredHead, deliveredHead } from './live-tests/delivered-head.ts';
import type { Block, Figure, TableBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

type Row = TableBlock['rows'][number];

/** What the maker promises, what it costs, how the sample came; what it delivers once that is measured. */
export function promisedBlocks(context: SheetContext): Block[] {
  const { nameplate } = context.record;
  const checks = nameplateChecks(nameplate);
  const delivered = deliveredHead(context.record);
  const rows = [...identityRows(context), ...electricalRows(context), ...bodyRows(context), ...purchaseRows(context)];
  return [
    { kind: 'figures', figures: headFigures(context, delivered) },
    ...(delivered.note === null ? [] : [{ kind: 'paragraph', text: delivered.note, tone: 'muted' } satisfies Block]),
    ...(checks.length === 0
      ? []
      : ([
          { kind: 'subhead', text: deliveredWords.checks },
          { kind: 'list', items: checks.map((check) => ({ text: nameplateCheckSentence(check, context.units) })) },
        ] satisfies Block[])),
    { kind: 'subhead', text: deliveredWords.promisedTable },
    { kind: 'table', rows },
    ...(nameplate.note?.trim()
      ? [{ kind: 'quote', label: promisedLabels.note, text: nameplate.note.trim() } satisfies Block]
      : []),
  ];
}

function headFigures({ record }: SheetContext, { delivered, cost }: DeliveredHead): Figure[] {
  const { ratedCapacityAh, price } = record.nameplate;
  const energy = promisedEnergy(record.nameplate);
  const promised = [
    ...(ratedCapacityAh === undefined ? [] : [formatValue(ratedCapacityAh, 'Ah')]),
    ...(energy === null ? [] : [formatValue(energy.energyWh, 'Wh')]),
  ];
  const perKwh = price === undefined || energy === null ? null : pricePerKwh({ price, energyWh: energy.energyWh });
  return [
    {
      label: deliveredWords.promised,
      value: promised.length === 0 ? deliveredWords.nothingPromised : promised.join(' · '),
      ...(energy?.from === 'computed' ? { note: promisedLabels.energyComputed } : {}),
    },
    delivered,
    ...(perKwh === null
      ? []
      : [{ label: deliveredWords.pricePerPromised, value: formatPrice(perKwh, record.nameplate.currency) }]),
    ...cost,
  ];
}

function identityRows({ record }: SheetContext): Row[] {
  const { maker, model, serial, revision, madeOn } = record.nameplate;
  return [
    ...row(promisedLabels.maker, maker),
    ...row(promisedLabels.model, model),
    ...row(promisedLabels.serial, serial),
    ...row(promisedLabels.revision, revision),
    ...row(promisedLabels.madeOn, madeOn),
  ];
}

function electricalRows({ record, units }: SheetContext): Row[] {
  const plate = record.nameplate;
  const temp = (tempDegC: number) => formatTemperature(tempDegC, units);
  const cells = [
    ...(plate.cellsInSeries === undefined ? [] : [promisedLabels.series(plate.cellsInSeries)]),
    ...(plate.stringsInParallel === undefined ? [] : [promisedLabels.strings(plate.stringsInParallel)]),
  ];
  const peakFor = plate.peakForS === undefined ? undefined : promisedLabels.peakFor(formatValue(plate.peakForS, 's'));
  return [
    ...valueRow(promisedLabels.voltage, plate.nominalVoltageV, 'V'),
    ...valueRow(promisedLabels.capacity, plate.ratedCapacityAh, 'Ah'),
    ...valueRow(promisedLabels.energy, plate.ratedEnergyWh, 'Wh'),
    ...row(promisedLabels.cells, cells.length === 0 ? undefined : cells.join(', ')),
    ...valueRow(promisedLabels.continuous, plate.continuousCurrentA, 'A'),
    ...valueRow(promisedLabels.peak, plate.peakCurrentA, 'A', peakFor),
    ...valueRow(promisedLabels.chargeCurrent, plate.chargeCurrentA, 'A'),
    ...valueRow(promisedLabels.chargeVoltage, plate.chargeVoltageV, 'V'),
    ...valueRow(promisedLabels.cutOff, plate.cutOffVoltageV, 'V'),
    ...row(promisedLabels.chargeTemp, span(plate.chargeLowestDegC, plate.chargeHighestDegC, temp)),
    ...row(promisedLabels.dischargeTemp, span(plate.dischargeLowestDegC, plate.dischargeHighestDegC, temp)),
    ...row(promisedLabels.ip, plate.ipCode),
    ...row(promisedLabels.cycles, plate.cycleLife),
    ...row(promisedLabels.warranty, plate.warranty),
    ...row(promisedLabels.marks, plate.marks),
  ];
}

function bodyRows({ record, units }: SheetContext): Row[] {
  const plate = record.nameplate;
  const sides = [plate.lengthMm, plate.widthMm, plate.heightMm] as const;
  const [lengthMm, widthMm, heightMm] = sides;
  const energyWh = promisedEnergy(plate)?.energyWh;
  const massKg = plate.massKg ?? plate.claimedMassKg;
  const perMass =
    energyWh === undefined || massKg === undefined ? undefined : specificEnergyWhPerKg({ energyWh, massKg });
  const perVolume =
    energyWh === undefined || lengthMm === undefined || widthMm === undefined || heightMm === undefined
      ? undefined
      : energyDensityWhPerL({ energyWh, lengthMm, widthMm, heightMm });
  const mass = (value: number | undefined) => (value === undefined ? undefined : formatMass(value, units));
  return [
    ...row(promisedLabels.massClaimed, mass(plate.claimedMassKg)),
    ...row(promisedLabels.massFound, mass(plate.massKg)),
    ...row(promisedLabels.sizeFound, sides.every((side) => side === undefined) ? undefined : formatBox(sides, units)),
    ...row(promisedLabels.specificEnergy, rounded(perMass, 'Wh/kg')),
    ...row(promisedLabels.energyDensity, rounded(perVolume, 'Wh/L')),
  ];
}

function purchaseRows({ record }: SheetContext): Row[] {
  const plate = record.nameplate;
  const { obtained, commission } = disclosureOf(record);
  const pricedOn = plate.pricedOn === undefined ? undefined : promisedLabels.onDay(formatDay(plate.pricedOn));
  return [
    ...row(
      promisedLabels.price,
      plate.price === undefined ? undefined : formatPrice(plate.price, plate.currency),
      pricedOn,
    ),
    ...row(promisedLabels.seller, plate.seller),
    ...row(promisedLabels.received, plate.receivedOn === undefined ? undefined : formatDay(plate.receivedOn)),
    ...row(promisedLabels.obtained, obtained, commission ?? undefined),
  ];
}

/** A field that was not filled in has no row: absence is never zero. */
function row(label: string, value: string | undefined, note?: string): Row[] {
  if (value === undefined) return [];
  return [note === undefined ? { label, value } : { label, value, note }];
}

function valueRow(label: string, value: number | undefined, unit: string, note?: string): Row[] {
  return row(label, value === undefined ? undefined : formatValue(value, unit), note);
}

function rounded(value: number | undefined, unit: string): string | undefined {
  return value === undefined ? undefined : withUnit(formatFixed(value, 0), unit);
}

function span(low: number | undefined, high: number | undefined, say: (value: number) => string): string | undefined {
  if (low === undefined) return high === undefined ? undefined : promisedLabels.upTo(say(high));
  return high === undefined ? promisedLabels.from(say(low)) : promisedLabels.to(say(low), say(high));
}
