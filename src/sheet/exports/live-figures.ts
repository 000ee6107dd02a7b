import { promisedEnergy } from '../../calc/promised-energy.ts';
import { capacityResult } from '../../grading/live-tests/capacity-result.ts';
import { cellsResults } from '../../grading/live-tests/cells-result.ts';
import { cutOffResults } from '../../grading/live-tests/cut-off-results.ts';
import { overcurrentResult } from '../../grading/live-tests/overcurrent-result.ts';
import type { CapacityResult, CutOffTrial, OvercurrentResult } from '../../grading/live-tests/results.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { FindingsFile } from '../../schema/findings-file.ts';

type LiveFigures = FindingsFile['liveTests'];

/** The headline figures of the live tests, at full precision. What a calculation refuses is null and named. */
export function liveFigures(record: Pick<PackRecord, 'nameplate' | 'tests'>): LiveFigures {
  const refused: string[] = [];
  const workedOut = <T>(matter: string, workOut: () => T): T | null => {
    try {
      return workOut();
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      refused.push(`${matter}: ${error.message}`);
      return null;
    }
  };
  const capacity = workedOut('capacity', () => capacityResult(record));
  const overcurrent = workedOut('overcurrent', () => overcurrentResult(record));
  const cutOffs = workedOut('cutOffs', () => cutOffResults(record));
  const cells = workedOut('cellSets', () => cellsResults(record));
  return {
    promised: workedOut('promised', () => promisedOf(record)),
    ...capacityFigures(capacity),
    runCount: record.tests.runs.length,
    overcurrent: overcurrent === null || overcurrent.trips.length === 0 ? null : overcurrentFigures(overcurrent),
    cutOffs: cutOffs?.flatMap(({ trials }) => trials.map(trialFigures)) ?? null,
    cellSets:
      cells?.map(({ readCount, spread }) => ({
        readCount,
        lowV: spread?.lowV ?? null,
        highV: spread?.highV ?? null,
        spreadMv: spread?.spreadMv ?? null,
      })) ?? null,
    refused,
  };
}

function promisedOf({ nameplate }: Pick<PackRecord, 'nameplate'>): LiveFigures['promised'] {
  const energy = promisedEnergy(nameplate);
  const { ratedCapacityAh } = nameplate;
  if (energy === null && ratedCapacityAh === undefined) return null;
  return {
    capacityAh: ratedCapacityAh ?? null,
    energyWh: energy?.energyWh ?? null,
    energyFrom: energy?.from ?? null,
  };
}

function capacityFigures(
  capacity: CapacityResult | null,
): Pick<LiveFigures, 'delivered' | 'completeRunCount' | 'cost' | 'retention' | 'peukertExponent'> {
  const { delivered = null, cost = null, retention = null, peukert = null } = capacity ?? {};
  return {
    delivered: delivered && {
      chargeAh: delivered.chargeAh,
      energyWh: delivered.energyWh,
      atLeast: delivered.atLeast,
      chargeShareFrac: delivered.chargeShareFrac,
      energyShareFrac: delivered.energyShareFrac,
      chargeUncertaintyAh: delivered.chargeUncertaintyAh,
      energyUncertaintyWh: delivered.energyUncertaintyWh,
    },
    completeRunCount: capacity?.completeCount ?? null,
    cost: cost && {
      perKwh: cost.perKwh,
      currency: cost.currency,
      price: cost.price,
      pricedOn: cost.pricedOn,
      basis: cost.basis,
    },
    retention: retention && { frac: retention.frac, gentleA: retention.gentleA, hardA: retention.hardA },
    peukertExponent: peukert?.exponent ?? null,
  };
}

function overcurrentFigures({ behaviour, trips }: OvercurrentResult): LiveFigures['overcurrent'] {
  const { verdict, kinds, slowestS, slowestAtA, heatAtA, heatAfterS, highestHeldA, highestHeldForS } = behaviour;
  return {
    verdict,
    kinds,
    tripCount: trips.length,
    slowestS,
    slowestAtA,
    heatAtA,
    heatAfterS,
    highestHeldA,
    highestHeldForS,
  };
}

function trialFigures({ cutOff, verdict }: CutOffTrial): NonNullable<LiveFigures['cutOffs']>[number] {
  return {
    kind: cutOff.kind,
    acted: cutOff.acted,
    verdict,
    worstCellVoltageV: cutOff.worstCellVoltageV ?? null,
    packVoltageV: cutOff.packVoltageV ?? null,
    currentA: cutOff.currentA ?? null,
    sensorDegC: cutOff.sensorDegC ?? null,
  };
}
