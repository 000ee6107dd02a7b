import * as v from 'valibot';
import { from0, momentMs } from './figure-limits.ts';
import { idSchema, sha256Schema } from './text-limits.ts';

/** One passage through Make safe. Valid for four hours and for the same local day. */
export const makeSafeSchema = v.looseObject({
  /** Milliseconds since 1970, UTC. */
  passedAtMs: v.pipe(momentMs, v.integer()),
  /** Local calendar day on the phone when it was passed. */
  day: v.pipe(v.string(), v.isoDate()),
  packVoltageV: from0('V'),
  /** As the tester judges it; `low` is at or under about 30 %. */
  chargeState: v.picklist(['low', 'part', 'full', 'unknown']),
  company: v.picklist(['second-person', 'alone']),
  coveredTerminalsPhoto: sha256Schema,
  /** Ids of the cautions that were acknowledged. */
  acknowledged: v.pipe(v.array(idSchema), v.maxLength(40)),
});
export type MakeSafe = v.InferOutput<typeof makeSafeSchema>;
