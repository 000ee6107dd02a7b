import { LID_OFF_STATES, type LidOffState, PACK_STATES } from '../schema/pack-states.ts';
import { type Asking, isClosed, questionsOf } from './questions.ts';

export interface ZoneProgress {
  /** Questions of the zone answered, and all that are asked of it, whatever the state of the pack. */
  answeredCount: number;
  askedCount: number;
  /**
   * Nothing of this state of Lid off or an earlier one is open: only then is a zone shown as finished for now. Where no
   * such state asks anything of it, what the closed pack was asked counts.
   */
  doneSoFar: boolean;
}

export function zoneProgress(asking: Asking, zoneId: string, state: LidOffState): ZoneProgress {
  const ofState = PACK_STATES.map((name) => ({ name, questions: questionsOf(asking, name, zoneId) }));
  const all = ofState.flatMap(({ questions }) => questions);
  const soFar = ofState.filter(({ name }) => isReached(name, state)).flatMap(({ questions }) => questions);
  const before = ofState.filter(({ name }) => isClosed(name)).flatMap(({ questions }) => questions);
  return {
    answeredCount: all.filter(({ open }) => !open).length,
    askedCount: all.length,
    doneSoFar: (soFar.length > 0 ? soFar : before).every(({ open }) => !open),
  };
}

function isReached(name: (typeof PACK_STATES)[number], state: LidOffState): boolean {
  const place = (LID_OFF_STATES as readonly string[]).indexOf(name);
  return place >= 0 && place <= LID_OFF_STATES.indexOf(state);
}
