import type { LiveTests } from '../../../schema/live-tests/live-tests.ts';
import type { Nameplate } from '../../../schema/nameplate.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';

/** What the blocks of the live tests are made from, on the sheet and on the screens alike. */
export interface LiveContext {
  nameplate: Nameplate;
  tests: LiveTests;
  units: UnitChoice;
}
