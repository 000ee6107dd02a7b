import { LID_OFF_STATES, type LidOffState } from '../../schema/pack-states.ts';
import { lidOffWords, beforeWords as say, stateWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Lid } from '../../ui/lid.tsx';
import { Screen } from '../../ui/screen.tsx';
import { nowMs } from '../clock.ts';
import { lostNow } from '../lost-now.ts';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** "Before you disturb it": what can't be had again once the pack leaves its present state. */
export function BeforeScreen({ session, state }: { session: PackSession; state: Exclude<LidOffState, 'apart'> }) {
  const record = session.record.value;
  const { definition } = session.definition;
  const lost = lostNow({ definition, record, grading: session.grading.value }, state);
  const nextState = LID_OFF_STATES[LID_OFF_STATES.indexOf(state) + 1] ?? 'apart';
  const home = hrefTo(record.packId, 'lid-off');

  async function goOn() {
    const leftBehind = lost.map(({ itemId }) => itemId);
    const v = { enteredAtMs: nowMs.peek(), leftBehind };
    await session.put({
      puts: [{ subject: 'state', part: nextState, v }],
      undoLabel: say.stateMark(stateWords[nextState]),
    });
    goTo(home);
  }

  return (
    <Screen
      title={say.title}
      back={{ href: home, label: lidOffWords.title }}
      middle={<SmokeHelp record={record} />}
      under={<SafetyLine session={session} />}
      dock={
        <>
          <a class={lost.length > 0 ? 'button primary' : 'button'} href={home}>
            {say.stayHere}
          </a>
          <button type="button" class={lost.length > 0 ? 'button' : 'button primary'} onClick={() => void goOn()}>
            {lost.length > 0 ? say.goAnyway(lost.length) : nextState === 'liveOpen' ? say.goLive : say.goApart}
          </button>
        </>
      }
    >
      {lost.length === 0 ? (
        <p>{say.nothing}</p>
      ) : (
        <>
          <p>{say.lead[state]}</p>
          <ul class="lines">
            {lost.map(({ itemId, lost: what, open }) => {
              const item = definition.items.find(({ id }) => id === itemId);
              return (
                <li key={itemId}>
                  <a class="line" href={hrefTo(record.packId, 'item', itemId)}>
                    <Lid outcome="notSeen" widthPx={22} />
                    <span>
                      <span class="title">{item?.title}</span> {item?.safety && <span class="tag">{words.safety}</span>}
                      <br />
                      <span class="small muted">{what}</span>
                    </span>
                    <span class="side">{open ? say.open : say.photoMissing}</span>
                  </a>
                </li>
              );
            })}
          </ul>
        </>
      )}
      <p class="notice calm">{say.liveNote}</p>
    </Screen>
  );
}
