import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult, CostResult } from '../../../grading/live-tests/results.ts';
import { formatDay } from '../../../text/format-day.ts';
import { formatPrice } from '../../../text/format-unit.ts';
import { costWords as say } from '../../../text/live-tests/results/cost.ts';
import { figureIn, plusMinusMoney } from '../../../text/live-tests/results/figures.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { figureRow, row } from './test-rows.ts';
import { uncertaintyBasis } from './uncertainty-words.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** What a delivered kilowatt-hour costs and on what that rests, or why it is not known. */
export function costBlocks(context: LiveContext): Block[] {
  if (context.tests.runs.length === 0) return [];
  return workedOut(say.matter, () => {
    const capacity = capacityResult(context);
    const { cost } = capacity;
    return [cost === null ? noCostBlock(context, capacity) : costBlock(capacity, cost)];
  });
}

/** "measured energy", or that it rests on nominal voltage. */
export function costBasis({ basis }: CostResult): string {
  return basis === 'measured' ? say.measured : say.nominal;
}

function costBlock({ runs, gentle }: CapacityResult, cost: CostResult): ResultBlock {
  const money = (amount: number) => formatPrice(amount, cost.currency ?? undefined);
  const isMeasured = cost.basis === 'measured';
  const { inputs } = say;
  return {
    kind: 'result',
    id: 'cost',
    title: say.title,
    value: say.perKwh(money(cost.perKwh)),
    marks: isMeasured ? [] : [say.nominalMark],
    rows: [
      ...row(say.labels.basis, costBasis(cost)),
      ...row(say.labels.price, money(cost.price), cost.pricedOn === null ? say.noDay : formatDay(cost.pricedOn)),
      ...row(
        say.labels.uncertainty,
        cost.uncertaintyPerKwh === null ? say.noUncertainty : plusMinusMoney(cost.uncertaintyPerKwh, money),
      ),
    ],
    working: workingOf({
      formulas: [
        isMeasured ? say.formulaMeasured : say.formulaNominal,
        ...(cost.uncertaintyPerKwh === null ? [] : [say.uncertainty]),
      ],
      inputs: [
        { label: inputs.price, value: money(cost.price) },
        ...(isMeasured
          ? figureRow(inputs.energy, cost.energyWh, { say: (wh) => figureIn(wh, 'Wh') })
          : [
              { label: inputs.charge, value: figureIn(cost.chargeAh, 'Ah') },
              ...figureRow(inputs.voltage, cost.nominalVoltageV, { say: (v) => figureIn(v, 'V') }),
            ]),
      ],
      uncertainty: uncertaintyWords(cost, uncertaintyBasis(runs, gentle?.runIds ?? [])),
      sources: ['definition', 'nearRate', ...(cost.uncertaintyPerKwh === null ? [] : (['uncertainty'] as const))],
    }),
  };
}

function uncertaintyWords({ uncertaintyPerKwh, basis }: CostResult, ofRuns: string | null): string | null {
  if (uncertaintyPerKwh === null) return null;
  const how = basis === 'measured' ? say.uncertaintyBasis : say.uncertaintyNominal;
  return testWords.sentenced([how, ...(ofRuns === null ? [] : [ofRuns])]);
}

function noCostBlock(context: LiveContext, capacity: CapacityResult): ResultBlock {
  return {
    kind: 'result',
    id: 'cost',
    title: say.title,
    value: say.none,
    marks: [],
    rows: row(say.labels.why, testWords.sentenced(missingWords(context, capacity))),
    working: null,
  };
}

function missingWords({ nameplate }: LiveContext, { completeCount, gentle }: CapacityResult): string[] {
  const { missing } = say;
  const price = nameplate.price === undefined ? [missing.price] : [];
  if (completeCount === 0) return [...price, missing.run];
  if (gentle === null) return [...price, nameplate.ratedCapacityAh === undefined ? missing.rated : missing.figures];
  return price.length === 0 ? [missing.energy] : price;
}
