import { useEffect, useState } from 'preact/hooks';
import { AS_PAID, type PriceChoice } from '../../grading/side-by-side/chosen-price.ts';
import { MOST_PACKS } from '../../grading/side-by-side/side-by-side.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import { keepOnPhone, keptOnPhone } from '../state/kept.ts';

/** What stands side by side, as this phone last had it. No part of any record. */
export interface Choice {
  packIds: readonly string[];
  /** By pack; those not named are counted as paid. */
  prices: Readonly<Record<string, PriceChoice>>;
  onlyDiffering: boolean;
}

const KEPT = 'sideBySide';

/** The choice, kept on the phone; null until it has been read. Packs no longer on the bench fall out of it. */
export function useChoice(here: readonly PackCard[]): [Choice | null, (choice: Choice) => void] {
  const [choice, setChoice] = useState<Choice | null>(null);
  useEffect(() => {
    void keptOnPhone<Choice>(KEPT).then((kept) => setChoice(kept ?? firstChoice(here)));
  }, []);
  const ids = here.map(({ packId }) => packId);
  const shown = choice && { ...choice, packIds: choice.packIds.filter((id) => ids.includes(id)) };
  return [
    shown,
    (next) => {
      setChoice(next);
      void keepOnPhone(KEPT, next);
    },
  ];
}

export function priceOf({ prices }: Choice, packId: string): PriceChoice {
  return (Object.hasOwn(prices, packId) ? prices[packId] : undefined) ?? AS_PAID;
}

/** Before anything was ticked: the packs changed last of which something is settled. */
function firstChoice(here: readonly PackCard[]): Choice {
  const begun = here.filter(({ settledCount }) => settledCount > 0);
  return { packIds: begun.slice(0, MOST_PACKS).map(({ packId }) => packId), prices: {}, onlyDiffering: false };
}
