import { type CostAfter, costAfterRemedies } from '../../grading/cost-after-remedies.ts';
import { costBound } from '../../grading/remedy-costs.ts';
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
    const subhead: Block = { kind: 'subhead', text: say.title };
    if (all.price === null) return all.otherCurrencyIds.length === 0 ? [] : [subhead, ...countedBlocks(context, all)];
    const figures: Figure[] = [
      ...(asFound === null ? [] : [{ label: say.asFound, value: perKwh(asFound.perKwh, asFound.currency) }]),
      ...afterFigure(say.outside, outside),
      ...(isSame(all, outside) ? [] : afterFigure(say.all, all)),
    ];
    return [
      subhead,
      { kind: 'figures', figures },
      ...(asFound === null ? [{ kind: 'paragraph', text: say.noEnergy, tone: 'muted' } satisfies Block] : []),
      ...countedBlocks(context, all),
    ];
  });
}

function afterFigure(label: string, cost: CostAfter): Figure[] {
  if (cost.price === null) return [];
  const money = say.price(formatPrice(cost.price, cost.currency ?? undefined));
  const value = cost.perKwh === null ? money : perKwh(cost.perKwh, cost.currency);
  const bound = costBound(cost);
  const notes = [...(cost.perKwh === null ? [] : [money]), ...(bound === 'ifNeeded' ? [say.ifNeeded] : [])];
  return [
    {
      label,
      value: bound === 'atLeast' ? say.atLeast(value) : value,
      ...(notes.length > 0 && { note: say.noted(notes) }),
    },
  ];
}

/** No remedy of the workshop is listed, or what is makes no difference. */
function isSame(all: CostAfter, outside: CostAfter): boolean {
  const countOf = ({ unpricedIds, otherCurrencyIds }: CostAfter) => unpricedIds.length + otherCurrencyIds.length;
  return (
    all.price === outside.price &&
    countOf(all) === countOf(outside) &&
    all.unsureIds.length === outside.unsureIds.length
  );
}

function perKwh(amount: number, currency: string | null): string {
  return say.perKwh(formatPrice(amount, currency ?? undefined));
}

/** What is not counted, and what may not be needed, by the numbers they are printed under. */
function countedBlocks({ grading }: SheetContext, { unpricedIds, otherCurrencyIds, unsureIds }: CostAfter): Block[] {
  const said = (ids: readonly string[], text: (numbers: readonly string[]) => string): Block[] => {
    const numbers = grading.remedies.flatMap(({ remedyId }, place) => (ids.includes(remedyId) ? [`${place + 1}`] : []));
    return numbers.length === 0 ? [] : [{ kind: 'paragraph', text: text(numbers), tone: 'muted' }];
  };
  return [
    ...said(unsureIds, say.unsure),
    ...said(unpricedIds, say.unpriced),
    ...said(otherCurrencyIds, say.inOtherCurrency),
  ];
}
