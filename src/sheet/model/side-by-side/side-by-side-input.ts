import type { ChosenPrice } from '../../../grading/side-by-side/chosen-price.ts';
import type { Compared, Firmness, Protection, SideBySide } from '../../../grading/side-by-side/side-by-side.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';

export interface SideBySideInput {
  /** One to eight packs. */
  compared: readonly Compared[];
  result: SideBySide;
  /** One a group of the result; null while not drawn, and where there is no order to weigh. */
  firmness: readonly (Firmness | null)[];
  /** One a pack, in the order of `compared`; null without a price. */
  prices: readonly (ChosenPrice | null)[];
  /** What its protections did, one list a pack, in the order of `compared`. */
  protections: readonly (readonly Protection[])[];
  /** Packs whose sheet is closed and that stand here by a record that is no more what was sealed. */
  unsealedIds: readonly string[];
  units: UnitChoice;
  appVersion: string;
  /** Minutes that local time is ahead of UTC where the paper is made. */
  utcOffsetMinutes: number;
}
