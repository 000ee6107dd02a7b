import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { testFields } from './test-fields.ts';

/** How a pack came back after it had opened. */
export const RECOVERIES = [
  'byItself',
  'loadOff',
  'loadOn',
  'chargerOff',
  'chargerOn',
  'button',
  'cooling',
  'didNot',
] as const;
export type Recovery = (typeof RECOVERIES)[number];

/** One over-current trial: a current, how long it was carried, and whether the pack opened. */
export const tripSchema = v.looseObject({
  ...testFields,
  currentA: above0('A'),
  /** Until it opened, or until the tester ended it. */
  heldForS: from0('s'),
  opened: v.boolean(),
  /** It was a short across the posts. Underlid asks for none: only so that what a laboratory found can be written down. */
  short: v.optional(v.boolean()),
  /** Something got hot, smoked or smelled. */
  heatSeen: v.optional(v.boolean()),
  /** It came back only once it had cooled. */
  coolingNeeded: v.optional(v.boolean()),
  recovery: v.optional(v.picklist(RECOVERIES)),
  recoveredAfterS: v.optional(from0('s')),
});
export type Trip = v.InferOutput<typeof tripSchema>;
