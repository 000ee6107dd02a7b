import { capacityNearRateAh } from '../../calc/capacity-near-rate.ts';
import { meanOf } from '../../calc/mean-of.ts';
import { peukertExponent } from '../../calc/peukert-exponent.ts';
import { peukertUncertainty } from '../../calc/peukert-uncertainty.ts';
import { promisedEnergy } from '../../calc/promised-energy.ts';
import { rateRetentionOfRuns } from '../../calc/rate-retention.ts';
import { runsNearCurrent } from '../../calc/runs-near-current.ts';
import { chargeShareFrac, energyShareFrac } from '../../calc/share-of-nameplate.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import { costResult } from './cost-result.ts';
import type { CapacityResult, Delivered, GentleCapacity, RetentionResult, RunResult } from './results.ts';
import { runResult } from './run-result.ts';

/** A complete run whose charge and current are known: only these show what the pack holds, and what the rate costs. */
interface TellingRun {
  id: string;
  currentA: number;
  chargeAh: number;
  energyWh: number | null;
  result: RunResult;
}

/** Rate at which capacity is told; calc/capacity-near-rate.ts. */
const GENTLE_RATE_PER_H = 0.2;

/** What the runs say of capacity, what a hard rate leaves of it, and what a delivered kilowatt-hour costs. */
export function capacityResult(tested: Tested): CapacityResult {
  const { nameplate, tests } = tested;
  const runs = tests.runs.map((run) => runResult(run, tested));
  const telling = runs.flatMap(tellingRun);
  const gentle = gentleCapacity(telling, nameplate);
  const exponent = peukertExponent(telling);
  return {
    runs,
    completeCount: runs.filter(({ completeness }) => completeness.complete).length,
    gentle,
    delivered: delivered({ gentle, runs, nameplate }),
    retention: retention(telling),
    peukert:
      exponent === null ? null : { exponent, exponentUncertainty: peukertUncertainty(telling), runIds: idsOf(telling) },
    cost: gentle === null ? null : costResult(gentle, nameplate),
  };
}

function tellingRun(result: RunResult): TellingRun[] {
  const { run, currentA, energyWh, completeness } = result;
  if (!completeness.complete || currentA === null || run.chargeAh === undefined) return [];
  return [{ id: run.id, currentA, chargeAh: run.chargeAh, energyWh, result }];
}

function gentleCapacity(telling: readonly TellingRun[], { ratedCapacityAh }: Nameplate): GentleCapacity | null {
  if (ratedCapacityAh === undefined) return null;
  const wantedA = GENTLE_RATE_PER_H * ratedCapacityAh;
  const means = capacityNearRateAh(telling, { ratedCapacityAh, ratePerH: GENTLE_RATE_PER_H });
  const [nearest] = telling.toSorted(
    (a, b) => Math.abs(a.currentA - wantedA) - Math.abs(b.currentA - wantedA) || a.currentA - b.currentA,
  );
  if (means === null || nearest === undefined) return null;
  const counted = runsNearCurrent(telling, nearest.currentA);
  const withEnergy = counted.filter(({ energyWh }) => energyWh !== null);
  return {
    ...means,
    chargeUncertaintyAh: meanOfKnown(counted.map(({ result }) => result.chargeUncertaintyAh)),
    energyUncertaintyWh: meanOfKnown(withEnergy.map(({ result }) => result.energyUncertaintyWh)),
    runIds: idsOf(counted),
  };
}

function delivered(given: {
  gentle: GentleCapacity | null;
  runs: readonly RunResult[];
  nameplate: Nameplate;
}): Delivered | null {
  const { gentle, runs, nameplate } = given;
  const found = gentle === null ? greatest(runs) : { ...gentle, atLeast: false };
  if (found === null) return null;
  const { chargeAh, energyWh } = found;
  const promised = promisedEnergy(nameplate);
  const { ratedCapacityAh } = nameplate;
  return {
    chargeAh,
    energyWh,
    atLeast: found.atLeast,
    chargeShareFrac:
      chargeAh === null || ratedCapacityAh === undefined ? null : chargeShareFrac({ chargeAh, ratedCapacityAh }),
    energyShareFrac:
      energyWh === null || promised === null ? null : energyShareFrac({ energyWh, promisedWh: promised.energyWh }),
    chargeUncertaintyAh: found.chargeUncertaintyAh,
    energyUncertaintyWh: found.energyUncertaintyWh,
    runIds: found.runIds,
  };
}

/** The greatest charge and the greatest energy of any run. One that ended in taper was a charge: it delivered nothing. */
function greatest(runs: readonly RunResult[]): Omit<Delivered, 'chargeShareFrac' | 'energyShareFrac'> | null {
  const given = runs.filter(({ run }) => run.end !== 'taper');
  const [byCharge] = given
    .filter(({ run }) => run.chargeAh !== undefined)
    .toSorted((a, b) => (b.run.chargeAh ?? 0) - (a.run.chargeAh ?? 0));
  const [byEnergy] = given
    .filter(({ energyWh }) => energyWh !== null)
    .toSorted((a, b) => (b.energyWh ?? 0) - (a.energyWh ?? 0));
  if (byCharge === undefined && byEnergy === undefined) return null;
  return {
    chargeAh: byCharge?.run.chargeAh ?? null,
    energyWh: byEnergy?.energyWh ?? null,
    atLeast: true,
    chargeUncertaintyAh: byCharge?.chargeUncertaintyAh ?? null,
    energyUncertaintyWh: byEnergy?.energyUncertaintyWh ?? null,
    runIds: [...new Set([byCharge, byEnergy].flatMap((result) => (result === undefined ? [] : [result.run.id])))],
  };
}

function retention(telling: readonly TellingRun[]): RetentionResult | null {
  const found = rateRetentionOfRuns(telling);
  if (found === null) return null;
  const currentsA = telling.map(({ currentA }) => currentA);
  return {
    frac: found.retentionFrac,
    gentleA: found.gentleA,
    hardA: found.hardA,
    gentleRunIds: idsOf(runsNearCurrent(telling, Math.min(...currentsA))),
    hardRunIds: idsOf(runsNearCurrent(telling, Math.max(...currentsA))),
  };
}

function idsOf(runs: readonly TellingRun[]): string[] {
  return runs.map(({ id }) => id);
}

/** Null if one is not known: the mean would then be that of the others. */
function meanOfKnown(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 || known.length < values.length ? null : meanOf(known);
}
