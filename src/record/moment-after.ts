import type { PackRecord } from './pack-record.ts';
import { stampMs } from './stamp-ms.ts';

/**
 * When something happens to a record: by the wall clock, but never before what the record holds already. As with its
 * stamps, so that a clock set back dates no revision before the one it takes the place of.
 *
 * Check   tests/record/moment-after.test.ts
 */
export function momentAfterMs({ newestAt }: Pick<PackRecord, 'newestAt'>, nowMs: number): number {
  return newestAt === null ? nowMs : Math.max(nowMs, stampMs(newestAt));
}
