import { type CostAfter, costAfterRemedies } from '../../grading/cost-after-remedies.ts';
import { formatPrice } from '../../text/format-unit.ts';
import { remedyWords } from '../../text/remedies.ts';
import { workedOut } from './live-tests/worked-out.ts';
import type { Block, Figure } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const say = remedyWords.costs;

/** Cost per delivered kWh as found and after remedies, once any listed remedy has a price. */
export function costAfterBlocks(context: SheetContext): Block[] {
  const { record, definition, grading } = context;
  return workedOut(say.matter, () => {
    const { asFound, outside, all } = costAfterRemedies(record, definition, grading);
    if (all.price === null) return [];
    const figures: Figure[] = [
      ...(asFound === null ? [] : [{ label: say.asFound, value: perKwh(asFound.perKwh, asFound.currency) }]),
      ...afterFigure(say.outside, outside),
      ...(all.price === outside.price && all.unpricedIds.length === outside.unpricedIds.length
        ? []
        : afterFigure(say.all, all)),
    ];
    return [
      { kind: 'subhead', text: say.title },
      { kind: 'figures', figures },
      ...(asFound === null ? [{ kind: 'paragraph', text: say.noEnergy, tone: 'muted' } satisfies Block] : []),
      ...unpricedBlock(context, all),
    ];
  });
}

function afterFigure(label: string, cost: CostAfter): Figure[] {
  if (cost.price === null) return [];
  const money = say.price(formatPrice(cost.price, cost.currency ?? undefined));
  const value = cost.perKwh === null ? money : perKwh(cost.perKwh, cost.currency);
  const shown = cost.unpricedIds.length === 0 ? value : say.atLeast(value);
  return [{ label, value: shown, ...(cost.perKwh !== null && { note: money }) }];
}

function perKwh(amount: number, currency: string | null): string {
  return say.perKwh(formatPrice(amount, currency ?? undefined));
}

/** By the numbers they are printed under. */
function unpricedBlock({ grading }: SheetContext, { unpricedIds }: CostAfter): Block[] {
  if (unpricedIds.length === 0) return [];
  const numbers = grading.remedies.flatMap(({ remedyId }, place) =>
    unpricedIds.includes(remedyId) ? [`${place + 1}`] : [],
  );
  return [{ kind: 'paragraph', text: say.unpriced(numbers), tone: 'muted' }];
}
