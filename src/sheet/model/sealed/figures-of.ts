import { nameplateChecks } from '../../../calc/nameplate-checks.ts';
import { pricePerKwh } from '../../../calc/price-per-kwh.ts';
import { promisedEnergy } from '../../../calc/promised-energy.ts';
import { energyDensityWhPerL, specificEnergyWhPerKg } from '../../../calc/specific-energy.ts';
import { type CostAfter, costAfterRemedies } from '../../../grading/cost-after-remedies.ts';
import { finishedReadings, isFinished } from '../../../grading/finished-readings.ts';
import { gradeRecord } from '../../../grading/grade-record.ts';
import { LIVE_RESULT_OF } from '../../../grading/live-tests/live-results.ts';
import type { PackRecord } from '../../../record/pack-record.ts';
import type { Checklist } from '../../../schema/checklist.ts';
import type { Nameplate } from '../../../schema/nameplate.ts';
import type { SealedFigures } from '../../../schema/sealed-sheet.ts';
import { flatLines, type Line } from './flat-lines.ts';

export interface FiguresInput {
  definition: Checklist;
  /** The definition it was graded by before it was carried over; null if it never was, or if that is not at hand. */
  earlier: Checklist | null;
  record: PackRecord;
}

/**
 * Every number and every word of judgement that a record comes to, flat by readable path: the grading, the one before
 * it was carried over, what was promised, and all that the live tests say. Taken from the result objects whole, so that
 * a new result is covered as soon as it is there.
 *
 * Check   tests/sheet/sealed/figures-of.test.ts
 */
export function figuresOf({ definition, earlier, record }: FiguresInput): SealedFigures {
  return Object.fromEntries([
    ...workedOut('grading', () => gradeRecord(definition, record)),
    ...(earlier === null ? [] : workedOut('earlier', () => gradeRecord(earlier, record))),
    // Only where somebody wrote of a remedy: sheets sealed before that could be done have no such lines.
    ...(Object.keys(record.remedyNotes).length === 0
      ? []
      : workedOut('afterRemedies', () => afterRemediesOf(definition, record))),
    ...secondReadersOf(definition, record),
    ...workedOut('promised', () => promisedOf(record.nameplate)),
    ...Object.entries(LIVE_RESULT_OF).flatMap(([matter, resultOf]) =>
      workedOut(`tests/${matter}`, () => resultOf(record)),
    ),
  ]);
}

/** None without a finished second reader: sheets sealed before there were any have no such lines. */
function secondReadersOf(definition: Checklist, record: PackRecord): Line[] {
  if (!record.secondReaders.some(isFinished)) return [];
  return workedOut('secondReaders', () => {
    const grading = gradeRecord(definition, record);
    return finishedReadings({ definition, record, grading }).map(({ number, shownCount, agreement }) => {
      const { kappa, ...counted } = agreement;
      return { number, shownCount, ...(kappa ?? { kappa }), ...counted };
    });
  });
}

/** A matter in which a figure is so far out that a calculation refuses it is sealed with the refusal. */
function workedOut(path: string, workOut: () => unknown): Line[] {
  try {
    return flatLines(path, workOut());
  } catch (error) {
    if (error instanceof RangeError) return [[`${path}/refused`, error.message]];
    throw error;
  }
}

/** The cost as found is sealed with the live tests. */
function afterRemediesOf(definition: Checklist, record: PackRecord) {
  const grading = gradeRecord(definition, record);
  const { outside, all } = costAfterRemedies(record, definition, grading);
  // As the first sealed sheets have it: what is priced in another currency stands among the unpriced, as printed.
  const sealed = ({ price, currency, unpricedIds, otherCurrencyIds, perKwh }: CostAfter) => ({
    price,
    currency,
    unpricedIds: grading.remedies
      .map(({ remedyId }) => remedyId)
      .filter((id) => unpricedIds.includes(id) || otherCurrencyIds.includes(id)),
    perKwh,
  });
  return { outside: sealed(outside), all: sealed(all) };
}

/** What stands on the sheet beside "delivered against promised" and under the nameplate. */
function promisedOf(nameplate: Nameplate) {
  const energy = promisedEnergy(nameplate);
  const { price, massKg = nameplate.claimedMassKg, lengthMm, widthMm, heightMm } = nameplate;
  const energyWh = energy?.energyWh;
  const isSized = lengthMm !== undefined && widthMm !== undefined && heightMm !== undefined;
  return {
    energy,
    pricePerKwh: price === undefined || energyWh === undefined ? null : pricePerKwh({ price, energyWh }),
    specificEnergyWhPerKg:
      energyWh === undefined || massKg === undefined ? null : specificEnergyWhPerKg({ energyWh, massKg }),
    energyDensityWhPerL:
      energyWh === undefined || !isSized ? null : energyDensityWhPerL({ energyWh, lengthMm, widthMm, heightMm }),
    checks: nameplateChecks(nameplate),
  };
}
