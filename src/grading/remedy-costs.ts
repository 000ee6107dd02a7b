import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import { gradeRank } from '../schema/grade.ts';
import type { Grading, RemedyResult } from './grading.ts';

/** What putting it right costs, as far as prices were typed. */
export interface RemedyCost {
  /** Of those counted, together; null where none is. A price of 0 is a price. */
  price: number | null;
  /** The one counted in; null where there is none. */
  currency: string | null;
  /** Listed remedies without a price, as printed. */
  unpricedIds: string[];
  /** Listed remedies priced in another currency, as printed: not counted either. */
  otherCurrencyIds: string[];
  /** Counted, though what is still open may turn out so that they are not needed, or cannot be done. */
  unsureIds: string[];
}

export interface RemedyCostsInput {
  record: Pick<PackRecord, 'nameplate' | 'remedyNotes'>;
  definition: Pick<Checklist, 'remedies'>;
  grading: Pick<Grading, 'remedies' | 'items'>;
  /** To be counted in: that of the price they are added to. Null: prices without a currency. */
  currency: string | null;
}

/**
 * What the listed remedies cost: those from outside, and all of them. One that is ruled out is not carried out and
 * costs nothing.
 *
 * Shape   prices of `record.remedyNotes` in; a price without a currency is in the nameplate's.
 * Units   `currency`
 * Throws  RangeError if a listed remedy is not one of the definition's.
 * Check   tests/grading/remedy-costs.test.ts
 */
export function remedyCosts(input: RemedyCostsInput): { outside: RemedyCost; all: RemedyCost } {
  const { definition, grading } = input;
  const known = new Set(definition.remedies.map(({ id }) => id));
  const stranger = grading.remedies.find(({ remedyId }) => !known.has(remedyId));
  if (stranger) {
    throw new RangeError(`remedyCosts: remedy must be one the definition names, got ${stranger.remedyId}`);
  }
  const listed = grading.remedies.filter(({ ruledOut }) => ruledOut === undefined);
  return {
    outside: costOf(
      input,
      listed.filter(({ reach }) => reach === 'outside'),
    ),
    all: costOf(input, listed),
  };
}

/**
 * How the sum stands to what it will cost: that; at least that, since some are not counted; or that if all of them are
 * needed and can be done, which bounds it neither way.
 */
export function costBound({ unpricedIds, otherCurrencyIds, unsureIds }: RemedyCost): 'exact' | 'atLeast' | 'ifNeeded' {
  if (unsureIds.length > 0) return 'ifNeeded';
  return unpricedIds.length + otherCurrencyIds.length > 0 ? 'atLeast' : 'exact';
}

/** The typed price of one remedy in the nameplate's currency; null where there is none in it. */
export function remedyPrice(
  { nameplate, remedyNotes }: Pick<PackRecord, 'nameplate' | 'remedyNotes'>,
  remedyId: string,
): number | null {
  const { price, currency = nameplate.currency } = remedyNotes[remedyId] ?? {};
  return price === undefined || currency !== nameplate.currency ? null : price;
}

function costOf(input: RemedyCostsInput, remedies: readonly RemedyResult[]): RemedyCost {
  const { nameplate, remedyNotes } = input.record;
  const noted = remedies.map((remedy) => {
    const { price, currency = nameplate.currency } = remedyNotes[remedy.remedyId] ?? {};
    return { remedy, price, inCurrency: (currency ?? null) === input.currency };
  });
  const counted = noted.flatMap(({ remedy, price, inCurrency }) =>
    price === undefined || !inCurrency ? [] : [{ remedy, price }],
  );
  const unpriced = noted.filter(({ price }) => price === undefined);
  const elsewhere = noted.filter(({ price, inCurrency }) => price !== undefined && !inCurrency);
  return {
    price: counted.length === 0 ? null : counted.reduce((sum, { price }) => sum + price, 0),
    currency: input.currency,
    unpricedIds: idsOf(unpriced),
    otherCurrencyIds: idsOf(elsewhere),
    unsureIds: idsOf(counted.filter(({ remedy }) => !isSurelyDone(input, remedy))),
  };
}

function idsOf(noted: readonly { remedy: RemedyResult }[]): string[] {
  return noted.map(({ remedy }) => remedy.remedyId);
}

/** It can be done, and on some item it bears on every outcome that is left is worse than what it leaves. */
function isSurelyDone({ definition, grading }: RemedyCostsInput, { remedyId, open }: RemedyResult): boolean {
  if (open !== undefined) return false;
  const { settles = [] } = definition.remedies.find(({ id }) => id === remedyId) ?? {};
  return settles.some(({ item, leaves }) => {
    const { possible = [] } = grading.items.find(({ itemId }) => itemId === item) ?? {};
    return (
      possible.length > 0 &&
      possible.every((outcome) => outcome !== 'doesNotApply' && gradeRank(outcome) > gradeRank(leaves))
    );
  });
}
