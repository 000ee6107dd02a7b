import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import type { Grading, RemedyResult } from './grading.ts';

/** What putting it right costs, as far as prices were typed. */
export interface RemedyCost {
  /** Of those priced, together; null where none is. A price of 0 is a price. */
  price: number | null;
  /** The nameplate's; null where it has none. */
  currency: string | null;
  /** Listed remedies without a price, or with one in another currency, as printed. The sum is a lower bound while any is. */
  unpricedIds: string[];
}

/**
 * What the listed remedies cost: those from outside, and all of them. One that is ruled out is not carried out and
 * costs nothing.
 *
 * Shape   prices of `record.remedyNotes` in; a price without a currency is in the nameplate's.
 * Units   the nameplate's currency
 * Throws  RangeError if a listed remedy is not one of the definition's.
 * Check   tests/grading/remedy-costs.test.ts
 */
export function remedyCosts(
  record: Pick<PackRecord, 'nameplate' | 'remedyNotes'>,
  definition: Pick<Checklist, 'remedies'>,
  grading: Pick<Grading, 'remedies'>,
): { outside: RemedyCost; all: RemedyCost } {
  const known = new Set(definition.remedies.map(({ id }) => id));
  const stranger = grading.remedies.find(({ remedyId }) => !known.has(remedyId));
  if (stranger) {
    throw new RangeError(`remedyCosts: remedy must be one the definition names, got ${stranger.remedyId}`);
  }
  const counted = grading.remedies.filter(({ ruledOut }) => ruledOut === undefined);
  return {
    outside: costOf(
      record,
      counted.filter(({ reach }) => reach === 'outside'),
    ),
    all: costOf(record, counted),
  };
}

/** The typed price of one remedy in the nameplate's currency; null where there is none in it. */
export function remedyPrice(
  { nameplate, remedyNotes }: Pick<PackRecord, 'nameplate' | 'remedyNotes'>,
  remedyId: string,
): number | null {
  const { price, currency = nameplate.currency } = remedyNotes[remedyId] ?? {};
  return price === undefined || currency !== nameplate.currency ? null : price;
}

function costOf(
  record: Pick<PackRecord, 'nameplate' | 'remedyNotes'>,
  remedies: readonly Pick<RemedyResult, 'remedyId'>[],
): RemedyCost {
  const priced = remedies.map(({ remedyId }) => ({ remedyId, price: remedyPrice(record, remedyId) }));
  const prices = priced.flatMap(({ price }) => (price === null ? [] : [price]));
  return {
    price: prices.length === 0 ? null : prices.reduce((sum, price) => sum + price, 0),
    currency: record.nameplate.currency ?? null,
    unpricedIds: priced.filter(({ price }) => price === null).map(({ remedyId }) => remedyId),
  };
}
