import { type PromisedEnergy, promisedEnergy } from '../../../calc/promised-energy.ts';
import { deliveredBars } from '../../../drawing/delivered-bars.ts';
import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult, Delivered } from '../../../grading/live-tests/results.ts';
import { deliveredResultWords as say } from '../../../text/live-tests/results/delivered.ts';
import { figureIn, plusMinus, rateC, sharePercent } from '../../../text/live-tests/results/figures.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { PLOT_WIDTH } from './plot-size.ts';
import { notCountedBecause, runInputs, runName } from './run-name.ts';
import { figureRow, row } from './test-rows.ts';
import { uncertaintyBasis } from './uncertainty-words.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Delivered against promised at a glance, and what does not count as capacity and why. */
export function deliveredBlocks(context: LiveContext): Block[] {
  if (context.tests.runs.length === 0) return [];
  return workedOut(say.matter, () => {
    const capacity = capacityResult(context);
    return [...plotBlocks(context, capacity), deliveredBlock(context, capacity), ...notCountedBlocks(capacity)];
  });
}

/** "292.2 Ah · 3741 Wh", with "at least" where it is that; null where no run gave a figure. */
export function deliveredFigure(delivered: Delivered | null): string | null {
  if (delivered === null) return null;
  const figures = [
    ...(delivered.chargeAh === null ? [] : [figureIn(delivered.chargeAh, 'Ah')]),
    ...(delivered.energyWh === null ? [] : [figureIn(delivered.energyWh, 'Wh')]),
  ];
  if (figures.length === 0) return null;
  const words = testWords.titled(figures);
  return delivered.atLeast ? testWords.atLeast(words) : words;
}

interface GlanceRow {
  label: string;
  promised: number | null;
  delivered: number | null;
  shareFrac: number | null;
  unit: string;
}

function plotBlocks({ nameplate }: LiveContext, { delivered }: CapacityResult): Block[] {
  if (delivered === null) return [];
  const atLeast = (text: string) => (delivered.atLeast ? testWords.atLeast(text) : text);
  const lines: GlanceRow[] = [
    {
      label: say.capacity,
      promised: nameplate.ratedCapacityAh ?? null,
      delivered: delivered.chargeAh,
      shareFrac: delivered.chargeShareFrac,
      unit: 'Ah',
    },
    {
      label: say.energy,
      promised: promisedEnergy(nameplate)?.energyWh ?? null,
      delivered: delivered.energyWh,
      shareFrac: delivered.energyShareFrac,
      unit: 'Wh',
    },
  ].filter((line) => line.delivered !== null || line.promised !== null);
  const rows = lines.map(({ label, promised, delivered: gave, shareFrac, unit }) => ({
    label,
    promised,
    promisedText: promised === null ? say.notPromised : say.promised(figureIn(promised, unit)),
    delivered: gave,
    deliveredText: gave === null ? say.notMeasured : atLeast(figureIn(gave, unit)),
    atLeast: delivered.atLeast,
    shareText: shareFrac === null ? '' : atLeast(sharePercent(shareFrac)),
  }));
  const alt = say.alt(
    lines.map(({ label, promised, unit }, place) => {
      const gave = rows[place]?.deliveredText ?? say.notMeasured;
      return promised === null ? say.altNoPromise(label, gave) : say.altRow(label, gave, figureIn(promised, unit));
    }),
  );
  return [
    {
      kind: 'plot',
      drawing: deliveredBars({ width: PLOT_WIDTH, rows, words: { alt, nothing: say.nothing } }),
      caption: delivered.atLeast ? say.captionAtLeast : say.captionComplete,
    },
  ];
}

function deliveredBlock(context: LiveContext, capacity: CapacityResult): ResultBlock {
  const { delivered, gentle, runs } = capacity;
  const { nameplate } = context;
  const promised = promisedEnergy(nameplate);
  const share = (frac: number) => (delivered?.atLeast ? testWords.atLeast(sharePercent(frac)) : sharePercent(frac));
  return {
    kind: 'result',
    id: 'delivered',
    title: say.title,
    value: deliveredFigure(delivered) ?? say.unknown,
    marks: [],
    rows: [
      ...figureRow(say.labels.share, delivered?.chargeShareFrac, { say: share }),
      ...figureRow(say.labels.energyShare, delivered?.energyShareFrac, { say: share, note: computedNote(promised) }),
      ...row(
        say.labels.basis,
        basisWords(context, capacity),
        gentle === null ? null : namesOf(capacity, gentle.runIds),
      ),
      ...figureRow(say.labels.chargeUncertainty, delivered?.chargeUncertaintyAh, { say: (u) => plusMinus(u, 'Ah') }),
      ...figureRow(say.labels.energyUncertainty, delivered?.energyUncertaintyWh, { say: (u) => plusMinus(u, 'Wh') }),
      ...(nameplate.ratedCapacityAh === undefined && capacity.completeCount > 0
        ? row(say.labels.why, say.noRated)
        : []),
    ],
    working:
      delivered === null
        ? null
        : workingOf({
            formulas: [delivered.atLeast ? say.formulaAtLeast : say.formulaComplete, say.formulaShare],
            inputs: [
              ...runInputs(runs, delivered.runIds),
              ...figureRow(say.labels.rated, nameplate.ratedCapacityAh, { say: (value) => figureIn(value, 'Ah') }),
              ...figureRow(say.labels.promisedEnergy, promised?.energyWh, { say: (value) => figureIn(value, 'Wh') }),
            ].map(({ label, value }) => ({ label, value })),
            uncertainty: uncertaintyBasis(runs, delivered.runIds),
            sources: sourcesOf(delivered),
          }),
  };
}

function computedNote(promised: PromisedEnergy | null): string | null {
  return promised?.from === 'computed' ? say.computedPromise : null;
}

function basisWords({ nameplate }: LiveContext, capacity: CapacityResult): string | null {
  const { gentle, delivered } = capacity;
  if (gentle !== null) {
    const { ratedCapacityAh } = nameplate;
    const current = figureIn(gentle.currentA, 'A');
    const near =
      ratedCapacityAh === undefined ? current : say.nearRate(current, rateC(gentle.currentA / ratedCapacityAh));
    return testWords.listed([say.counts(gentle.count), near]);
  }
  return delivered === null ? null : say.greatest(namesOf(capacity, delivered.runIds));
}

function namesOf({ runs }: CapacityResult, ids: readonly string[]): string {
  return testWords.listed(ids.map((id) => runName(runs, id)));
}

function notCountedBlocks(capacity: CapacityResult): Block[] {
  const left = capacity.runs.filter(({ completeness }) => !completeness.complete);
  if (left.length === 0) return [];
  const items = left.map((result) => ({
    text: say.doesNotCount(runName(capacity.runs, result.run.id), testWords.sentenced(notCountedBecause(result))),
  }));
  return [{ kind: 'list', items }];
}

function sourcesOf({ atLeast, chargeUncertaintyAh, energyUncertaintyWh }: Delivered): CalculationSource[] {
  return [
    'completeRun',
    ...(atLeast ? [] : (['rate', 'nearRate'] as const)),
    'definition',
    ...(chargeUncertaintyAh === null && energyUncertaintyWh === null ? [] : (['uncertainty'] as const)),
  ];
}
