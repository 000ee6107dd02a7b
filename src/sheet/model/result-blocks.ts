import type { Range, RemedyResult, ZoneResult } from '../../grading/grading.ts';
import type { RiskLevel } from '../../schema/checklist.ts';
import { carryOverWords } from '../../text/carry-over.ts';
import { formatFixed, formatPercent, formatScore, formatSpan } from '../../text/format-number.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { listOf, sheetWords } from '../../text/sheet.ts';
import { stopWords } from '../../text/stop.ts';
import { verdictWords } from '../../text/verdict.ts';
import type { Block, Figure, ZoneRow } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** Verdict, rule, figures and zones: the answer before the reasons. */
export function resultBlocks(context: SheetContext): Block[] {
  const { grading } = context;
  return [
    verdictBlock(context),
    ...scoreBlocks(context),
    { kind: 'zones', rows: grading.zones.map((zone) => zoneRow(context, zone)) },
    ...(grading.route === 'short'
      ? [{ kind: 'paragraph', text: sheetWords.shortRouteNote, tone: 'muted' } satisfies Block]
      : []),
  ];
}

function verdictBlock(context: SheetContext): Block {
  const { verdict, stop } = context.grading;
  const { title, line, settled } = verdictWords(verdict);
  const failed = stop === 'failed';
  const cleared = clearedBy(context);
  const advice = failed
    ? [...stopWords.steps, sheetWords.withheld]
    : [...(cleared === null ? [] : [cleared]), ...(stop === 'possible' ? [sheetWords.stopPossible] : [])];
  return { kind: 'verdict', stop: failed, settled, title, line, advice };
}

/** Which remedies clear which serious hazards; null where the verdict does not rest on remedies. */
function clearedBy({ grading, definition, hazardOf }: SheetContext): string | null {
  if (!['workshopFirst', 'notAsItComes'].includes(grading.verdict.low)) return null;
  const seriousIds = new Set(grading.hazards.filter(({ risk }) => isSerious(risk.low)).map(({ hazardId }) => hazardId));
  const clearing = grading.remedies.filter((remedy) => remedy.clearsHazardIds.some((id) => seriousIds.has(id)));
  if (clearing.length === 0) return null;
  const hazardIds = [...new Set(clearing.flatMap((remedy) => remedy.clearsHazardIds))].filter((id) =>
    seriousIds.has(id),
  );
  const hazards = listOf(hazardIds.map((id) => hazardOf(id).title));
  const [only, ...more] = clearing;
  if (only !== undefined && more.length === 0) {
    const text = definition.remedies.find(({ id }) => id === only.remedyId)?.text ?? only.remedyId;
    return sheetWords.clearedBy(hazards, text.replace(/\.$/, ''));
  }
  // As numbered under Remedies: a row of whole sentences would hide the score below it.
  return sheetWords.clearedByNumbers(
    hazards,
    listOf(clearing.map((remedy) => `${grading.remedies.indexOf(remedy) + 1}`)),
  );
}

function isSerious(risk: RiskLevel | null): boolean {
  return risk === 'high' || risk === 'serious';
}

function scoreBlocks({ grading, earlier }: SheetContext): Block[] {
  const { build, score, factor, after, settled } = grading;
  if (grading.stop === 'failed') return [];
  if (build === null || score === null) return [{ kind: 'paragraph', text: sheetWords.nothingToScore, tone: 'plain' }];
  const figures = formatScore(score, settled);
  const labels = sheetWords.figures;
  const shown: Figure[] = [
    { label: labels.build, value: formatScore(build, settled) },
    { label: labels.factor, value: `×\u00a0${settled ? formatFixed(factor.low, 2) : formatSpan(factor, 2)}` },
    { label: labels.score, value: figures },
    ...afterFigure(labels.afterOutside, after.outside, afterSettled(grading, 'outside')),
    ...(grading.remedies.some(({ reach }) => reach === 'workshop')
      ? afterFigure(labels.afterWorkshop, after.workshop, afterSettled(grading, 'workshop'))
      : []),
    ...(earlier
      ? [{ label: carryOverWords.sheetFigure(earlier.definition.version), value: scoreOf(earlier.grading) }]
      : []),
  ];
  const share = sheetWords.settledShare(
    formatPercent(grading.settledShareFrac),
    grading.settledCount,
    grading.askedCount,
  );
  return [
    { kind: 'rule', range: score, settled, figures, alt: sheetWords.ruleAlt(figures, settled) },
    { kind: 'figures', figures: shown },
    ...(settled ? [] : [{ kind: 'paragraph', text: share, tone: 'muted' } satisfies Block]),
  ];
}

function scoreOf({ score, settled }: SheetContext['grading']): string {
  return score === null ? carryOverWords.withheld : formatScore(score, settled);
}

function afterFigure(label: string, range: Range | null, settled: boolean): Figure[] {
  return range === null ? [] : [{ label, value: formatScore(range, settled) }];
}

/** A remedy that counts at the high end only keeps an after-score open though every item is settled. */
export function afterSettled(
  grading: { settled: boolean; remedies: readonly RemedyResult[] },
  reach: RemedyResult['reach'],
): boolean {
  const counted = grading.remedies.filter((remedy) => reach === 'workshop' || remedy.reach === 'outside');
  return grading.settled && counted.every(({ open }) => open === undefined);
}

function zoneRow({ zoneOf }: SheetContext, zone: ZoneResult): ZoneRow {
  const weight = formatPercent(zone.weightFrac);
  const common = { zoneId: zone.zoneId, title: zoneOf(zone.zoneId).title };
  if (zone.q === null) {
    const glyphWord = sheetWords.zoneOutside;
    return { ...common, glyph: 'doesNotApply', glyphWord, bar: null, shown: '\u2013', detail: glyphWord };
  }
  return {
    ...common,
    glyph: zone.worst ?? 'notSeen',
    glyphWord: zone.worst === null ? sheetWords.nothingGraded : GRADE_WORDS[zone.worst],
    bar: { lowFrac: zone.q.low, highFrac: zone.q.high },
    shown: zoneShown(zone, zone.q),
    detail: sheetWords.zoneDetail(zone.settledCount, zone.askedCount, weight),
  };
}

function zoneShown(zone: ZoneResult, q: Range): string {
  const settled = zone.settledCount === zone.askedCount;
  return settled ? formatFixed(q.low * 100, 0) : formatSpan({ low: q.low * 100, high: q.high * 100 }, 0);
}
