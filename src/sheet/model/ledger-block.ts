import { formatFixed } from '../../text/format-number.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { Block, LedgerRow } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const MINUS = '\u2212';

/** Where each point went: from 100 by items to Build, then by factors to the Score. Empty where the score is withheld. */
export function ledgerBlocks(context: SheetContext): Block[] {
  const { points, grading } = context;
  if (points === null) return [];
  const words = sheetWords.ledger;
  return [
    ...(grading.settled ? [] : [{ kind: 'paragraph', text: words.low, tone: 'muted' } satisfies Block]),
    {
      kind: 'ledger',
      rows: [
        total(words.start, 1000),
        ...itemRows(context),
        total(words.build, points.buildTenths),
        ...factorRows(context),
        total(words.score, points.scoreTenths),
      ],
    },
    { kind: 'paragraph', text: words.shown, tone: 'muted' },
  ];
}

function itemRows({ grading, points, itemOf, zoneOf }: SheetContext): LedgerRow[] {
  return (grading.ledger?.lines ?? []).map((line) => {
    const item = itemOf(line.itemId);
    return {
      kind: 'lost',
      text: `${item.title} · ${zoneOf(item.zone).title}`,
      points: lost(points?.itemTenths.get(line.itemId) ?? 0),
      detail: line.open ? sheetWords.ledger.open : null,
    };
  });
}

function factorRows({ grading, points, hazardOf }: SheetContext): LedgerRow[] {
  return (grading.ledger?.factors ?? []).map((factor, place) => {
    const risk = sheetWords.ledger.risk(factor.risk);
    return {
      kind: 'lost',
      text: sheetWords.ledger.factor(hazardOf(factor.hazardId).title, factor.k),
      points: lost(points?.factorTenths[place] ?? 0),
      detail: factor.open ? `${risk} · ${sheetWords.ledger.open}` : risk,
    };
  });
}

function total(text: string, tenths: number): LedgerRow {
  return { kind: 'total', text, points: formatFixed(tenths / 10, 1), detail: null };
}

function lost(tenths: number): string {
  return `${tenths === 0 ? '' : MINUS}${formatFixed(tenths / 10, 1)}`;
}
