import { packWords } from '../text/bench.ts';
import { lidOffWords } from '../text/item.ts';
import { liveTestsWords } from '../text/live-tests/live-tests.ts';
import { stopWords } from '../text/stop.ts';
import { words } from '../text/words.ts';
import { Screen } from '../ui/screen.tsx';
import { backToPack } from './back-to-pack.ts';
import { nowMs, utcOffsetMinutes } from './clock.ts';
import {
  CardScreen,
  LetterScreen,
  OwnerScreen,
  PricesScreen,
  PublishScreen,
  RemediesScreen,
  SecondReaderScreen,
  ShootClockScreen,
} from './further-places.ts';
import { LIVE_TEST_PARTS, liveTestAt } from './live-tests/live-test-parts.ts';
import { PartLines } from './live-tests/part-lines.tsx';
import { SensorGate } from './live-tests/sensor-gate-screen.tsx';
import { makeSafeGate } from './make-safe-gate.ts';
import { KeepAwake } from './parts/keep-awake.tsx';
import { SmokeHelp } from './parts/smoke-help.tsx';
import { StopSteps } from './parts/stop-steps.tsx';
import { isClosed } from './questions.ts';
import { hrefTo, type Place } from './route.ts';
import { AfterwardsScreen } from './screens/afterwards-screen.tsx';
import { ArrivalScreen } from './screens/arrival-screen.tsx';
import { BeforeScreen } from './screens/before-screen.tsx';
import { FactScreen } from './screens/fact-screen.tsx';
import { ItemScreen } from './screens/item-screen.tsx';
import { LidOffScreen } from './screens/lid-off-screen.tsx';
import { LiveTestsScreen } from './screens/live-tests-screen.tsx';
import { MakeSafeScreen } from './screens/make-safe-screen.tsx';
import { NameplateScreen } from './screens/nameplate-screen.tsx';
import { PackScreen } from './screens/pack-screen.tsx';
import { PhotoScreen } from './screens/photo-screen.tsx';
import { PhotosScreen } from './screens/photos-screen.tsx';
import { SheetScreen } from './screens/sheet-screen.tsx';
import { ZoneScreen } from './screens/zone-screen.tsx';
import { SinceScreen } from './since/since-screen.tsx';
import type { PackSession } from './state/pack-session.ts';
import { stopFindings } from './stop-findings.ts';

/** The screen of one place of a pack; places under the lid stand behind the gate. */
export function PackPlace({ session, place, id }: { session: PackSession; place: Place; id: string }) {
  const { definition } = session.definition;
  switch (place) {
    case 'pack':
      return <PackScreen session={session} />;
    case 'nameplate':
      return <NameplateScreen session={session} />;
    case 'arrival':
      return <ArrivalScreen session={session} />;
    case 'photos':
      return <PhotosScreen session={session} />;
    case 'photo':
      return <PhotoScreen key={id} session={session} id={id} />;
    case 'sheet':
      return <SheetScreen key={id} session={session} id={id} />;
    case 'since':
      return <SinceScreen session={session} />;
    case 'remedies':
      return <RemediesScreen session={session} />;
    case 'owner':
      return <OwnerScreen session={session} />;
    case 'publish':
      return <PublishScreen session={session} />;
    case 'card':
      return <CardScreen session={session} />;
    case 'letter':
      return <LetterScreen session={session} />;
    case 'prices':
      return <PricesScreen session={session} />;
    case 'shoot-clock':
      return <ShootClockScreen session={session} />;
    case 'second-reader':
      return <SecondReaderScreen session={session} id={id} />;
    case 'afterwards':
      return <AfterwardsScreen session={session} />;
    case 'live-tests':
      return isStopped(session) ? (
        <Stopped session={session} keep="live tests" />
      ) : (
        <LiveTestsScreen session={session} />
      );
    case 'live-test':
      return <LiveTestPlace session={session} id={id} />;
    case 'make-safe':
      return isStopped(session) ? <Stopped session={session} /> : <MakeSafeScreen session={session} />;
    case 'item': {
      const item = definition.items.find((candidate) => candidate.id === id);
      if (!item) return <Nowhere session={session} />;
      if (item.state === 'loaded' && !item.stop && isStopped(session)) return <Stopped session={session} />;
      const screen = <ItemScreen key={id} session={session} item={item} />;
      return isClosed(item.state) || item.stop ? screen : <UnderTheLid session={session}>{() => screen}</UnderTheLid>;
    }
    case 'fact': {
      const fact = definition.facts.find((candidate) => candidate.id === id);
      if (!fact) return <Nowhere session={session} />;
      const screen = <FactScreen key={id} session={session} fact={fact} />;
      return isClosed(fact.state) ? screen : <UnderTheLid session={session}>{() => screen}</UnderTheLid>;
    }
    case 'lid-off':
      return <UnderTheLid session={session}>{(state) => <LidOffScreen session={session} state={state} />}</UnderTheLid>;
    case 'zone': {
      const zone = definition.zones.find((candidate) => candidate.id === id);
      if (!zone) return <Nowhere session={session} />;
      return (
        <UnderTheLid session={session}>
          {(state) => <ZoneScreen key={id} session={session} zone={zone} state={state} />}
        </UnderTheLid>
      );
    }
    case 'before':
      return (
        <UnderTheLid session={session}>
          {(state) =>
            state === 'apart' ? (
              <LidOffScreen session={session} state={state} />
            ) : (
              <BeforeScreen session={session} state={state} />
            )
          }
        </UnderTheLid>
      );
  }
}

/** One kind of live test or one test of it; those of the open pack stand behind their own gates. */
function LiveTestPlace({ session, id }: { session: PackSession; id: string }) {
  const found = liveTestAt(id);
  if (!found) return <Nowhere session={session} />;
  const { part, testId } = found;
  const screen = <part.Screen session={session} testId={testId} />;
  if (part.belongs === 'closed') return screen;
  return (
    <UnderTheLid session={session}>
      {(state) => (
        <SensorGate session={session} state={state}>
          {screen}
        </SensorGate>
      )}
    </UnderTheLid>
  );
}

type LidState = NonNullable<PackSession['record']['value']['state']>;

/** Lid off opens only after Make safe, and closes while a stop finding stands. */
function UnderTheLid({
  session,
  children,
}: {
  session: PackSession;
  children: (state: LidState) => preact.JSX.Element;
}) {
  const record = session.record.value;
  const atMs = nowMs.value;
  const gate = makeSafeGate(record, atMs, utcOffsetMinutes(atMs));
  if (isStopped(session)) return <Stopped session={session} />;
  if (gate.open) {
    return (
      <>
        {children(record.state ?? 'untouched')}
        <KeepAwake />
      </>
    );
  }
  return (
    <Screen
      title={lidOffWords.title}
      back={backToPack(record)}
      middle={<SmokeHelp record={record} />}
      dock={
        <a class="button primary" href={hrefTo(record.packId, 'make-safe')}>
          {lidOffWords.toMakeSafe}
        </a>
      }
    >
      <p class="notice">{gate.last ? lidOffWords.makeSafeAgain : lidOffWords.makeSafeFirst}</p>
    </Screen>
  );
}

function isStopped(session: PackSession): boolean {
  return stopFindings(session.definition.definition, session.grading.value).length > 0;
}

/** `keep`: what was typed of the live tests can be corrected all the same, a mistyped reading being what may stop it. */
function Stopped({ session, keep }: { session: PackSession; keep?: 'live tests' }) {
  const record = session.record.value;
  const typed = LIVE_TEST_PARTS.filter(({ belongs, count }) => belongs === 'closed' && count(record.tests) > 0);
  return (
    <Screen title={stopWords.title} back={backToPack(record)} middle={<SmokeHelp record={record} />}>
      <StopSteps packId={record.packId} items={stopFindings(session.definition.definition, session.grading.value)} />
      {keep === 'live tests' && typed.length > 0 && (
        <section class="stack">
          <h2>{liveTestsWords.correct}</h2>
          <PartLines record={record} parts={typed} />
        </section>
      )}
    </Screen>
  );
}

function Nowhere({ session }: { session: PackSession }) {
  return (
    <Screen title={packWords.nowhere} back={{ href: hrefTo(session.packId), label: words.back }}>
      <p>{packWords.nowhereHint}</p>
    </Screen>
  );
}
