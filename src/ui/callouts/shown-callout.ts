import { calloutWords } from '../../text/callouts.ts';
import { type EditedCallout, leaderNumbers } from './editing.ts';

/** A callout with the number it carries; null for kinds without one. */
export type ShownCallout = EditedCallout & { number: number | null };

export function shownCallouts(callouts: readonly EditedCallout[]): ShownCallout[] {
  const numbers = leaderNumbers(callouts);
  return callouts.map((callout) => ({ ...callout, number: numbers.get(callout.id) ?? null }));
}

export function calloutName({ kind, number, text }: ShownCallout): string {
  return calloutWords.nameOf({ kind, number, text: text ?? '' });
}
