import type { MakeSafe } from '../schema/make-safe.ts';
import { makeSafeWords } from '../text/make-safe.ts';

/** OSHA 29 CFR 1910.303(g)(2): live parts are guarded from here on; nobody works on them alone (our choice). */
export const GUARDED_FROM_V = 50;

/** What has been typed and ticked on the way through the gate. */
export interface MakeSafeDraft {
  packVoltageV: number | null;
  chargeState: MakeSafe['chargeState'] | null;
  company: MakeSafe['company'] | null;
  photoId: string | null;
  acknowledged: string[];
  /** When it was passed with, should the passage still wait to be written. */
  passedAtMs?: number;
}

/** What is still missing before the gate opens, in words. */
export function missingForMakeSafe(draft: MakeSafeDraft, cautions: readonly { id: string }[]): string[] {
  const say = makeSafeWords.missingParts;
  const open = cautions.filter(({ id }) => !draft.acknowledged.includes(id)).length;
  return [
    draft.packVoltageV === null ? say.voltage : '',
    draft.chargeState === null ? say.chargeState : '',
    draft.company === null ? say.company : '',
    (draft.packVoltageV ?? 0) >= GUARDED_FROM_V && draft.company === 'alone' ? say.secondPerson : '',
    draft.photoId === null ? say.photo : '',
    open > 0 ? say.cautions(open) : '',
  ].filter(Boolean);
}
