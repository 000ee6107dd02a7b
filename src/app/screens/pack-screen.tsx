import { useState } from 'preact/hooks';
import { nextRevision } from '../../record/fold-closings.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { afterwardsWords } from '../../text/afterwards.ts';
import { packWords as say } from '../../text/bench.ts';
import { checklistsWords } from '../../text/checklists.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { formatClock, formatDay } from '../../text/format-day.ts';
import { formatFixed, outward } from '../../text/format-number.ts';
import { stateWords } from '../../text/item.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { sinceWords } from '../../text/since.ts';
import { verdictWords } from '../../text/verdict.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { RuleView } from '../../ui/rule-view.tsx';
import { Screen } from '../../ui/screen.tsx';
import { Tape } from '../../ui/tape.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { useComeIn } from '../closing/come-in.ts';
import { ComeInNotice } from '../closing/come-in-notice.tsx';
import { isEmptyPack } from '../is-empty-pack.ts';
import { testCountOf } from '../live-tests/live-test-part.ts';
import { LIVE_TEST_PARTS } from '../live-tests/live-test-parts.ts';
import { makeSafeGate } from '../make-safe-gate.ts';
import { CarryOverPart } from '../parts/carry-over-part.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { StopSteps } from '../parts/stop-steps.tsx';
import { putAwayPut } from '../put-away.ts';
import { questionsOf } from '../questions.ts';
import { RetestPart } from '../retest/retest-part.tsx';
import { goTo, hrefTo, type Place } from '../route.ts';
import { refreshBench } from '../state/bench.ts';
import { eraseFromPhone } from '../state/kept.ts';
import { dropOpenPack } from '../state/open-pack.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';

/** What is done with a record beside the way through the pack, in the order in which it is mostly wanted. */
const FURTHER = ['remedies', 'publish', 'prices', 'second-reader', 'shoot-clock'] as const;

interface Station {
  place: Place;
  title: string;
  side: string;
  closed: boolean;
  done: boolean;
}

/** A pack's own screen: how it stands, and its stations in the order of the job. */
export function PackScreen({ session }: { session: PackSession }) {
  const [asking, setAsking] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const comeIn = useComeIn(session);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const stations = stationsOf(session);
  const stops = stopFindings(definition, grading);
  // Once the lid is off the closed pack's tests are over, whatever was left open.
  const passed: readonly Place[] = record.state === null ? ['photos'] : ['photos', 'live-tests'];
  const open = stations.find(({ done, closed, place }) => !done && !closed && !passed.includes(place));
  const isClosed = record.sheet.now === 'closed';
  const next = stops.length === 0 && !isClosed && open ? open : stations.find(({ place }) => place === 'sheet');
  const verdict = verdictWords(grading.verdict);
  const begun = grading.settledCount > 0;

  async function putAway() {
    setAsking(false);
    const saved = await session.put({ puts: [putAwayPut(record)] });
    if (saved) goTo('#/');
  }

  /** Nothing is lost with an empty pack, so it leaves no trace to be cleared away later. */
  async function takeOff() {
    const problem = await eraseFromPhone(record.packId);
    if (problem !== null) return setWrong(writeProblems[problem]);
    dropOpenPack(record.packId);
    await refreshBench();
    goTo('#/');
  }

  return (
    <Screen
      title={<Tape>{words.packLabel(record.nameplate.name ?? '', record.nameplate.sample ?? '')}</Tape>}
      back={{ href: '#/', label: words.bench }}
      end={record.demo && <span class="mark">{words.inventedDemo}</span>}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          {next && (
            <a class="button primary" href={hrefTo(record.packId, next.place)}>
              {say.goOn(next.title)}
            </a>
          )}
        </>
      }
    >
      {stops.length > 0 && <StopSteps packId={record.packId} items={stops} />}
      <section class="stack">
        {begun ? (
          <>
            <h2>{verdict.title}</h2>
            <p class="small muted">{verdict.line}</p>
            {grading.score && <RuleView score={grading.score} settled={grading.settled} />}
            {grading.score && !grading.settled && (
              <p class="small muted">
                {say.between(...shownEnds(grading.score), grading.settledCount, grading.askedCount)}
              </p>
            )}
          </>
        ) : (
          <p class="muted">{say.nothingToScore}</p>
        )}
      </section>
      <p class="small muted">
        {say.by(definition.title, definition.version)}{' '}
        {definition.status === 'draft' && <span class="mark">{checklistsWords.draftMark}</span>}
      </p>
      <CarryOverPart session={session} />
      {record.retestOf && (
        <a class="button" href={hrefTo(record.packId, 'since')}>
          {sinceWords.link(record.retestOf.label ?? sinceWords.earlierUnnamed)}
        </a>
      )}
      {comeIn && <ComeInNotice session={session} comeIn={comeIn} />}
      <ul class="lines">
        {stations.map(({ place, title, side, closed, done }) => (
          <li key={place}>
            <a class="line" {...(closed ? { 'aria-disabled': true } : { href: hrefTo(record.packId, place) })}>
              <span class="fact-mark">{done ? '✓' : ''}</span>
              <span class="title">{title}</span>
              <span class="side">{side}</span>
            </a>
          </li>
        ))}
      </ul>
      <section class="stack">
        <h2>{say.further}</h2>
        <ul class="lines">
          {FURTHER.map((place) => (
            <li key={place}>
              <a class="line" href={hrefTo(record.packId, place)}>
                <span class="fact-mark" />
                <span class="title">{say.furtherTitles[place]}</span>
                <span class="side">{say.furtherHints[place]}</span>
              </a>
            </li>
          ))}
        </ul>
      </section>
      {wrong && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      {!isEmptyPack(record) && <RetestPart session={session} />}
      <button
        type="button"
        class="button quiet"
        onClick={() => (isEmptyPack(record) ? void takeOff() : setAsking(true))}
      >
        {isEmptyPack(record) ? say.takeOff : say.putAway}
      </button>
      {asking && (
        <Dialog title={say.putAway} onClose={() => setAsking(false)}>
          <p>{say.putAwayAsk}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={() => void putAway()}>
              {say.putAwayNow}
            </button>
          </div>
        </Dialog>
      )}
    </Screen>
  );
}

/** Both ends of the range, rounded outwards. */
function shownEnds(score: { low: number; high: number }): [string, string] {
  const ends = outward(score, 1);
  return [formatFixed(ends.low, 1), formatFixed(ends.high, 1)];
}

function stationsOf(session: PackSession): Station[] {
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const atMs = nowMs.value;
  const gate = makeSafeGate(record, atMs, utcOffsetMinutes(atMs));
  const asking = { definition, record, grading };
  const arrival = questionsOf(asking, 'arrival');
  const answered = arrival.filter(({ open }) => !open).length;
  const loaded = questionsOf(asking, 'loaded');
  const loadedAnswered = loaded.filter(({ open }) => !open).length;
  const testCount = testCountOf(LIVE_TEST_PARTS, record.tests);
  const stopped = stopFindings(definition, grading).length > 0;
  // The sample's number is filled in by the app.
  const filled = Object.keys(record.nameplate).filter((field) => field !== 'sample').length;
  const opened = record.state !== null;
  return [
    {
      place: 'nameplate',
      title: say.nameplate,
      side: say.filled(filled),
      closed: false,
      done: record.nameplate.name !== undefined && filled > 2,
    },
    {
      place: 'arrival',
      title: say.arrival,
      side: words.countOf(answered, arrival.length),
      closed: false,
      done: answered === arrival.length,
    },
    {
      place: 'live-tests',
      title: say.liveTests,
      side: stopped ? say.closedByStop : liveTestsWords.standing(testCount, loadedAnswered, loaded.length),
      closed: stopped && testCount === 0,
      done: !stopped && loaded.length > 0 && loadedAnswered === loaded.length,
    },
    {
      place: 'make-safe',
      title: say.makeSafe,
      side: stopped ? say.closedByStop : gateWords(gate, opened && grading.settled),
      closed: stopped,
      done: !stopped && (gate.open || (opened && grading.settled)),
    },
    {
      place: 'lid-off',
      title: say.lidOff,
      side: stopped ? say.closedByStop : record.state === null ? say.needsMakeSafe : stateWords[record.state],
      closed: stopped || (!gate.open && !opened),
      done: opened && grading.settled,
    },
    {
      place: 'photos',
      title: say.photos,
      side: say.photoCount(record.photos.length),
      closed: false,
      done: record.photos.length > 0,
    },
    {
      place: 'sheet',
      title: say.sheet,
      side: sheetStanding(record),
      closed: false,
      done: record.sheet.now === 'closed',
    },
    {
      place: 'afterwards',
      title: say.afterwards,
      side:
        record.afterwards.fate === undefined ? say.notYet : afterwardsWords.fates[record.afterwards.fate].toLowerCase(),
      closed: false,
      done: record.afterwards.fate !== undefined,
    },
  ];
}

function sheetStanding(record: PackRecord): string {
  const { sheet } = record;
  if (sheet.now === 'open') return '';
  if (sheet.now === 'closed') return closingWords.station.closed(sheet.revision);
  return closingWords.station.revising(nextRevision(record));
}

function gateWords(gate: ReturnType<typeof makeSafeGate>, settled: boolean): string {
  if (!gate.last || gate.goodUntilMs === null) return say.notYet;
  if (settled) return say.passedOn(formatDay(gate.last.day));
  return gate.open ? say.passedUntil(formatClock(gate.goodUntilMs, utcOffsetMinutes(gate.goodUntilMs))) : say.askAgain;
}
