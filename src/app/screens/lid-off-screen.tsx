import { useState } from 'preact/hooks';
import type { LidOffState } from '../../schema/pack-states.ts';
import { formatClock } from '../../text/format-day.ts';
import { formatFixed } from '../../text/format-number.ts';
import { lidOffWords as say, stateWords } from '../../text/item.ts';
import { sensorWords } from '../../text/live-tests/sensor.ts';
import { words } from '../../text/words.ts';
import { CutawayMap } from '../../ui/cutaway-map.tsx';
import { Lid } from '../../ui/lid.tsx';
import { Screen } from '../../ui/screen.tsx';
import { askNext } from '../ask-next.ts';
import { backToPack } from '../back-to-pack.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { sensorKind } from '../live-tests/kinds/sensor.ts';
import { sensorGate } from '../live-tests/sensor-gate.ts';
import { lostNow } from '../lost-now.ts';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { hrefOf } from '../question-place.ts';
import type { Asking } from '../questions.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { zoneProgress } from '../zone-progress.ts';

/** The cutaway as the way in: the checklist's zones, what to look at next, what must be seen before the pack is disturbed. */
export function LidOffScreen({ session, state }: { session: PackSession; state: LidOffState }) {
  const [tray, setTray] = useState(false);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const asking: Asking = { definition, record, grading };
  const next = askNext(asking, state);
  const nextZone = next && (next.question.kind === 'item' ? next.question.item.zone : next.question.fact.zone);
  const lost = lostNow(asking, state);
  const lostItems = lost.filter(({ open }) => open).length;
  const lostPhotos = lost.filter(({ needsPhoto }) => needsPhoto).length;
  const sensorTests = sensorKind.testsOf(record.tests);
  const safety = definition.items.filter(({ id }) => grading.openSafetyItemIds.includes(id));

  return (
    <Screen
      title={say.title}
      quiet={stateWords[state]}
      back={backToPack(record)}
      middle={<SmokeHelp record={record} />}
      under={<SafetyLine session={session} onLidOff />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => setTray(true)}>
            {say.photoFirst}
          </button>
          {next ? (
            <button type="button" class="button primary" onClick={() => goTo(hrefOf(record.packId, next.question))}>
              {say.goOn}
            </button>
          ) : (
            <a class="button primary" href={hrefTo(record.packId, state === 'apart' ? 'sheet' : 'before')}>
              {say.nextState[state]}
            </a>
          )}
        </>
      }
    >
      <CutawayMap
        cellsInSeries={record.nameplate.cellsInSeries ?? null}
        zones={definition.zones.map(({ id, title }) => {
          const { answeredCount, askedCount, doneSoFar } = zoneProgress(asking, id, state);
          return {
            zoneId: id,
            title: say.zoneOnMap(title),
            progressText: words.countOf(answeredCount, askedCount),
            state: id === nextZone ? 'next' : doneSoFar ? 'done' : 'todo',
          };
        })}
        onChoose={(zoneId) => goTo(hrefTo(record.packId, 'zone', zoneId))}
      />
      {next ? (
        <a class="card next-card" href={hrefOf(record.packId, next.question)}>
          <span class="small muted">{say.lookHereNext}</span>
          <br />
          <strong>{next.question.kind === 'item' ? next.question.item.ask : next.question.fact.ask}</strong>
          <br />
          <span class="small muted">
            {[
              next.narrowsByPoints === null
                ? ''
                : say.settlesUpTo(formatFixed(next.narrowsByPoints, next.narrowsByPoints < 1 ? 1 : 0)),
              next.question.kind === 'item' && next.question.item.safety ? words.safety : '',
            ]
              .filter(Boolean)
              .join(' · ')}
          </span>
        </a>
      ) : (
        <p class="muted">{say.nothingOpen}</p>
      )}
      {lost.length > 0 && state !== 'apart' && (
        <a class="line" href={hrefTo(record.packId, 'before')}>
          <span class="fact-mark">!</span>
          <span>{say.beforeFurther(say.cantBeHadLater(lostItems, lostPhotos))}</span>
          <span class="side">›</span>
        </a>
      )}
      {(state === 'liveOpen' || sensorTests.length > 0) && (
        <a class="line" href={hrefTo(record.packId, 'live-test', sensorKind.id)}>
          <span class="fact-mark">{sensorTests.length > 0 ? sensorTests.length : ''}</span>
          <span class="title">{sensorWords.title}</span>
          <span class="side">{sensorGateWords(session)}</span>
        </a>
      )}
      {safety.length > 0 && (
        <details>
          <summary class="line plain">
            <Lid outcome="notSeen" widthPx={22} />
            <span>{say.safetyTitle}</span>
          </summary>
          <ul class="lines">
            {safety.map((item) => (
              <li key={item.id}>
                <a class="line" href={hrefTo(record.packId, 'item', item.id)}>
                  <span />
                  <span class="title">{item.title}</span>
                  <span class="side">{stateWords[item.state]}</span>
                </a>
              </li>
            ))}
          </ul>
        </details>
      )}
      {state !== 'apart' && next && (
        <a class="button quiet" href={hrefTo(record.packId, 'before')}>
          {say.nextState[state]}
        </a>
      )}
      {tray && (
        <PhotoTray
          session={session}
          zone={nextZone ?? definition.zones[0]?.id ?? 'arrival'}
          itemId={null}
          what={say.photoFirst}
          onClose={() => setTray(false)}
          onAdded={([first]) => {
            setTray(false);
            if (first !== undefined) goTo(hrefTo(record.packId, 'photo', `${first}/new`));
          }}
        />
      )}
    </Screen>
  );
}

/** Beside the way to the sensor tests: until when their gate is open, or that it stands before them. */
function sensorGateWords({ record }: PackSession): string {
  const atMs = nowMs.value;
  const { open, goodUntilMs } = sensorGate(record.value.tests, atMs, utcOffsetMinutes(atMs));
  if (record.value.state !== 'liveOpen') return '›';
  return open && goodUntilMs !== null
    ? sensorWords.gateUntil(formatClock(goodUntilMs, utcOffsetMinutes(goodUntilMs)))
    : sensorWords.gateFirst;
}
