import type { Range, RemedyResult, ZoneResult } from '../../grading/grading.ts';
import { carryOverWords } from '../../text/carry-over.ts';
import { formatFixed, formatPercent, formatScore, formatSpan } from '../../text/format-number.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { sheetWords } from '../../text/sheet.ts';
import { stopWords } from '../../text/stop.ts';
import { verdictWords } from '../../text/verdict.ts';
import { clearingAdvice } from './clearing-words.ts';
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
  const advice = failed
    ? [...stopWords.steps, sheetWords.withheld]
    : stop === 'possible'
      ? [sheetWords.stopPossible]
      : clearingAdvice(context);
  return { kind: 'verdict', stop: failed, settled, title, line, advice };
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
