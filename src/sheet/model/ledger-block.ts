import type { Ledger, Range } from '../../grading/grading.ts';
import { roundedShares } from '../../grading/largest-remainder.ts';
import { formatFixed, outward } from '../../text/format-number.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { Block, LedgerRow } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const MINUS = '\u2212';
const TENTH = 0.1;

/**
 * Where each point went: from 100 by items to Build, then by factors to the Score. Shown lines are apportioned, so that
 * they add up to the figures shown in the head. Empty where the score is withheld or there is none.
 */
export function ledgerBlocks(context: SheetContext): Block[] {
  const { ledger, build, score, settled } = context.grading;
  if (ledger === null || build === null || score === null) return [];
  const words = sheetWords.ledger;
  const buildTenths = shownTenths(build, settled);
  const scoreTenths = shownTenths(score, settled);
  const rows: LedgerRow[] = [
    total(words.start, 1000),
    ...itemRows(context, ledger, 1000 - buildTenths),
    total(words.build, buildTenths),
    ...factorRows(context, ledger, buildTenths - scoreTenths),
    total(words.score, scoreTenths),
  ];
  return [
    ...(settled ? [] : [{ kind: 'paragraph', text: words.low, tone: 'muted' } satisfies Block]),
    { kind: 'ledger', rows },
    { kind: 'paragraph', text: words.shown, tone: 'muted' },
  ];
}

/** Tenths of a point as the head shows them: nearest when settled, else the low end rounded down. */
function shownTenths(range: Range, settled: boolean): number {
  const low = settled ? Number(formatFixed(range.low, 1)) : outward(range, 1).low;
  return Math.round(low * 10);
}

function itemRows({ itemOf, zoneOf }: SheetContext, { lines }: Ledger, lostTenths: number): LedgerRow[] {
  const counts = apportioned(lines, lostTenths);
  return lines.map((line, place) => {
    const item = itemOf(line.itemId);
    return {
      kind: 'lost',
      text: `${item.title} · ${zoneOf(item.zone).title}`,
      points: lost(counts[place] ?? 0),
      detail: line.open ? sheetWords.ledger.open : null,
    };
  });
}

function factorRows({ hazardOf }: SheetContext, { factors }: Ledger, lostTenths: number): LedgerRow[] {
  const counts = apportioned(factors, lostTenths);
  return factors.map((factor, place) => {
    const risk = sheetWords.ledger.risk(factor.risk);
    return {
      kind: 'lost',
      text: sheetWords.ledger.factor(hazardOf(factor.hazardId).title, factor.k),
      points: lost(counts[place] ?? 0),
      detail: factor.open ? `${risk} · ${sheetWords.ledger.open}` : risk,
    };
  });
}

function apportioned(lines: readonly { lostPoints: number }[], totalCount: number): number[] {
  return lines.length === 0
    ? []
    : roundedShares(
        lines.map(({ lostPoints }) => lostPoints),
        { unit: TENTH, totalCount },
      );
}

function total(text: string, tenths: number): LedgerRow {
  return { kind: 'total', text, points: formatFixed(tenths / 10, 1), detail: null };
}

function lost(tenths: number): string {
  return `${tenths === 0 ? '' : MINUS}${formatFixed(tenths / 10, 1)}`;
}
