import type { PackRecord } from '../record/pack-record.ts';

/**
 * The parts of a record that a grading rests on. Without `tests` or `nameplate` nothing was tested or claimed: derived
 * items are then open like any other.
 */
export type Judged = Pick<PackRecord, 'answers' | 'facts' | 'route'> & Partial<Pick<PackRecord, 'nameplate' | 'tests'>>;

/** What the results of the live tests are worked out from. */
export type Tested = Pick<PackRecord, 'nameplate' | 'tests'>;
