import type { PackRecord } from '../../../record/pack-record.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';

/**
 * What the blocks of the live tests are made from, on the sheet and on the screens alike. Without photos the photo ruler
 * gives no distance.
 */
export type LiveContext = Pick<PackRecord, 'nameplate' | 'tests'> &
  Partial<Pick<PackRecord, 'photos'>> & { units: UnitChoice };
