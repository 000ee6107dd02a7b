import { scoreCostPlot } from '../../../drawing/score-cost-plot.ts';
import { zoneProfile } from '../../../drawing/zone-profile.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { formatPrice } from '../../../text/format-unit.ts';
import { sideBySideWords } from '../../../text/side-by-side.ts';
import { PLOT_HEIGHT, PLOT_WIDTH } from '../live-tests/plot-size.ts';
import { curvePlots, type DrawnRun } from '../live-tests/run-plot-blocks.ts';
import { workedOut } from '../live-tests/worked-out.ts';
import type { Block, PlotBlock } from '../sheet.ts';
import { foundCost } from './cost-rows.ts';
import type { PackColumn } from './pack-columns.ts';
import { scoreText } from './verdict-rows.ts';
import { comparedZones, isOpen, zoneText } from './zone-rows.ts';

const say = sideBySideWords.plots;

/** Score over cost, zones, and one run of each pack over the others. */
export function comparisonPlots(columns: readonly PackColumn[]): Block[] {
  return [
    ...scoreCostBlocks(columns),
    ...zoneBlocks(columns),
    ...workedOut(sideBySideWords.groups.tests, () => runBlocks(columns)),
  ];
}

/** One plot a currency: amounts in different ones have no common axis. */
function scoreCostBlocks(columns: readonly PackColumn[]): Block[] {
  const rows = columns.map((column, sign) => ({
    label: column.name,
    sign,
    currency: column.price?.currency ?? null,
    costPerKwh: foundCost(column)?.costPerKwh ?? null,
    score: column.member.score,
    shown: scoreText(column),
  }));
  const drawn = rows.filter(({ costPerKwh, score }) => costPerKwh !== null && score !== null);
  return [...new Set(drawn.map(({ currency }) => currency))].map((currency): PlotBlock => {
    const packs = rows.map((row) => (row.currency === currency ? row : { ...row, costPerKwh: null }));
    const described = packs.flatMap(({ label, shown, costPerKwh, score }) =>
      costPerKwh === null || score === null
        ? []
        : [say.scoreCost.altRow(label, shown, formatPrice(costPerKwh, currency ?? undefined))],
    );
    return {
      kind: 'plot',
      drawing: scoreCostPlot({
        width: PLOT_WIDTH,
        height: PLOT_HEIGHT.two,
        packs,
        words: {
          alt: say.scoreCost.alt(described),
          nothing: say.scoreCost.nothing,
          score: say.scoreCost.score,
          cost: say.scoreCost.cost(currency),
          without: say.scoreCost.without,
          tick: formatFixed,
        },
      }),
      caption: say.scoreCost.caption,
    };
  });
}

/** One plot a checklist: zones of different ones are not the same. */
function zoneBlocks(columns: readonly PackColumn[]): Block[] {
  const zones = comparedZones(columns);
  const groups = [...new Set(columns.map(({ definition }) => definition.id))];
  return groups.map((checklistId): PlotBlock => {
    const shown = zones.filter(({ key }) => key.startsWith(`${checklistId}/`));
    const packs = columns.flatMap(({ name, definition }, sign) =>
      definition.id !== checklistId
        ? []
        : [
            {
              label: name,
              sign,
              zones: shown.map(({ found }) => (isOpen(found[sign]) ? null : (found[sign]?.q ?? null))),
              open: shown.flatMap(({ title, found }) => (isOpen(found[sign]) ? [title] : [])),
            },
          ],
    );
    const open = packs.filter((pack) => pack.open.length > 0);
    const described = packs.map(({ label, sign }) =>
      say.zones.altRow(
        label,
        shown.map(({ title, found }) =>
          say.zones.altZone(title, isOpen(found[sign]) ? say.zones.open : zoneText(found[sign])),
        ),
      ),
    );
    return {
      kind: 'plot',
      drawing: zoneProfile({
        width: PLOT_WIDTH,
        zones: shown.map(({ title }) => title),
        packs,
        words: {
          alt: say.zones.alt(described),
          nothing: say.zones.nothing,
          axis: say.zones.axis,
          below: open.length === 0 ? '' : say.zones.without(open.map((pack) => openText(pack, shown.length))),
          tick: formatFixed,
        },
      }),
      caption: say.zones.caption,
    };
  });
}

function openText({ label, open }: { label: string; open: readonly string[] }, zoneCount: number): string {
  return say.zones.withoutRow(label, open.length === zoneCount ? 'all' : open);
}

/** Of each pack one run that shows its capacity, by charge where that was logged. */
function runBlocks(columns: readonly PackColumn[]): Block[] {
  const drawn = columns.flatMap((column): DrawnRun[] => {
    const run = shownRun(column);
    return run === null ? [] : [{ label: column.name, run, nameplate: column.record.nameplate }];
  });
  const plots = curvePlots(drawn);
  const chosen = plots.find(({ by }) => by === 'charge') ?? plots[0];
  return chosen === undefined ? [] : [chosen.block];
}

function shownRun({ capacity }: PackColumn): DrawnRun['run'] | null {
  if (capacity === null) return null;
  const logged = capacity.runs.map(({ run }) => run).filter(({ curve, end }) => curve !== undefined && end !== 'taper');
  return logged.find(({ id }) => capacity.gentle?.runIds.includes(id)) ?? logged[0] ?? null;
}
