import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { LidOffState } from '../../schema/pack-states.ts';
import { randomId } from '../../storage/open-store.ts';
import { localDay } from '../../text/format-day.ts';
import { lidOffWords } from '../../text/item.ts';
import { SENSOR_CAUTIONS, sensorWords as say } from '../../text/live-tests/sensor.ts';
import { Screen } from '../../ui/screen.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { NotSaved } from '../parts/not-saved.tsx';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { useKeptDraft } from '../state/use-kept-draft.ts';
import { sensorGate } from './sensor-gate.ts';

/**
 * What stands before the hot and cold sensor tests: they are run on the pack live and open, after cautions of their own.
 * Once the pack is apart there is nothing left to run; what was seen can still be written down.
 */
export function SensorGate({
  session,
  state,
  children,
}: {
  session: PackSession;
  state: LidOffState;
  children: JSX.Element;
}) {
  const atMs = nowMs.value;
  if (state === 'apart') return children;
  if (state === 'untouched') return <TooEarly session={session} />;
  const { open } = sensorGate(session.record.value.tests, atMs, utcOffsetMinutes(atMs));
  return open ? children : <Cautious session={session} />;
}

function TooEarly({ session }: { session: PackSession }) {
  const record = session.record.value;
  return (
    <Screen
      title={say.title}
      back={{ href: hrefTo(record.packId, 'lid-off'), label: lidOffWords.title }}
      middle={<SmokeHelp record={record} />}
      under={<SafetyLine session={session} />}
    >
      <p class="notice">{say.onlyLive}</p>
    </Screen>
  );
}

function Cautious({ session }: { session: PackSession }) {
  const record = session.record.value;
  const [ticked, setTicked] = useKeptDraft<readonly string[]>(`sensorGate/${session.packId}`, []);
  const [asked, setAsked] = useState(false);
  const openCount = SENSOR_CAUTIONS.filter(({ id }) => !ticked.includes(id)).length;

  async function pass() {
    if (openCount > 0) {
      setAsked(true);
      return;
    }
    const passedAtMs = Date.now();
    const day = localDay(passedAtMs, utcOffsetMinutes(passedAtMs));
    const v = { passedAtMs, day, acknowledged: SENSOR_CAUTIONS.map(({ id }) => id) };
    // Nothing stays ticked for the next time, even if this passage has to be written again.
    setTicked(null);
    nowMs.value = passedAtMs;
    await session.put({ puts: [{ subject: 'sensorGate', part: randomId(), v }] });
  }
  return (
    <Screen
      title={say.gateTitle}
      back={{ href: hrefTo(record.packId, 'lid-off'), label: lidOffWords.title }}
      middle={<SmokeHelp record={record} />}
      under={<SafetyLine session={session} />}
      dockClass="two-rows"
      dock={
        <>
          {asked && openCount > 0 && (
            <p class="notice dock-line" role="alert">
              {say.gateMissing(openCount)}
            </p>
          )}
          <NotSaved session={session} />
          <button
            type="button"
            class="button primary"
            {...(openCount > 0 && { 'aria-disabled': true })}
            onClick={() => void pass()}
          >
            {say.gatePass}
          </button>
        </>
      }
    >
      <p class="muted">{say.gateLead}</p>
      <ul class="lines">
        {SENSOR_CAUTIONS.map(({ id, text }) => (
          <li key={id}>
            <label class="tick">
              <input
                type="checkbox"
                name={id}
                checked={ticked.includes(id)}
                onChange={(event) => {
                  const others = ticked.filter((other) => other !== id);
                  setTicked(event.currentTarget.checked ? [...others, id] : others);
                }}
              />
              <span>{text}</span>
            </label>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
