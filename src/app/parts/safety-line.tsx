import { LID_OFF_STATES } from '../../schema/pack-states.ts';
import { lidOffWords, stateWords } from '../../text/item.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** On every screen under the lid: the state of the pack, and how many safety items are still open. */
export function SafetyLine({ session, onLidOff }: { session: PackSession; onLidOff?: boolean }) {
  const { state } = session.record.value;
  const openCount = session.grading.value.openSafetyItemIds.length;
  return (
    <p class="safety-line">
      <span>{onLidOff ? '' : stateWords[state ?? LID_OFF_STATES[0]]}</span>
      {openCount > 0 && onLidOff && <span>{lidOffWords.openSafety(openCount)}</span>}
      {openCount > 0 && !onLidOff && (
        <a href={hrefTo(session.packId, 'lid-off')}>{lidOffWords.openSafety(openCount)}</a>
      )}
    </p>
  );
}
