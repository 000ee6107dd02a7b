import { useState } from 'preact/hooks';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import type { Evidence, Grade } from '../../schema/grade.ts';
import { LID_OFF_STATES, type LidOffState } from '../../schema/pack-states.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { itemWords } from '../../text/item.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { measuredWords } from '../../text/measured.ts';
import { stopWords } from '../../text/stop.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { testsHref } from '../live-tests/tests-href.ts';
import { afterGrade, afterNote, afterReading, afterReason, isAgainstMeasured } from '../next-answer.ts';
import { ItemChoices } from '../parts/item-choices.tsx';
import { type ItemOver, ItemOverlays } from '../parts/item-overlays.tsx';
import { MeasuredPart } from '../parts/measured-part.tsx';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { homeOf, placeAmong } from '../question-place.ts';
import { isClosed } from '../questions.ts';
import { goTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';
import { VoicePart } from '../voice/voice-part.tsx';

/** One item: its question, its sentences as big choices, and what goes with the answer. */
export function ItemScreen({ session, item }: { session: PackSession; item: Item }) {
  const [over, setOver] = useState<ItemOver>('none');
  const [planned, setPlanned] = useState<Evidence | null>(null);
  /** The grade that is to count against what was measured, while its reason is asked for. */
  const [against, setAgainst] = useState<Grade | null>(null);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const answer = record.answers[item.id];
  const result = grading.items.find(({ itemId }) => itemId === item.id);
  const place = placeAmong({ definition, record, grading }, { kind: 'item', item, open: false });
  const photos = record.photos.filter(({ itemIds }) => itemIds.includes(item.id));
  const chosen = result?.measured ? result.grade : answer?.kind === 'grade' ? answer.grade : null;
  const note = answer?.note ?? '';
  const stops = stopFindings(definition, grading);
  const photoWanted = photos.length === 0 && wantsPhoto(item, chosen);
  const evidence = answer?.kind === 'grade' || answer?.kind === 'readings' ? answer.evidence : planned;

  /** Null takes the answer back. */
  async function give(next: Answer | null, label: string) {
    const base = { subject: 'answer', part: item.id };
    await session.put({
      puts: [next === null ? { ...base, gone: true } : { ...base, v: next }],
      undoLabel: `${item.title}: ${next === null ? itemWords.clear : label}`,
    });
  }
  function choose(grade: Grade) {
    if (isAgainstMeasured(result, grade)) {
      setAgainst(grade);
      setOver('overrule');
    } else void giveGrade(grade, null);
  }
  /** A grade chosen against what was measured counts with its reason; both are kept and printed. */
  async function giveGrade(grade: Grade, because: string | null) {
    setOver('none');
    await give(afterGrade(answer, result, { grade, evidence, because }), GRADE_WORDS[grade]);
    if (item.stop && grade === 'failed') setOver('stop');
  }
  function giveReason(kind: 'overrule' | 'notSeen' | 'doesNotApply', reason: string) {
    setOver('none');
    if (kind !== 'overrule') void give(afterReason(answer, kind, reason), itemWords[kind]);
    else if (against !== null) void giveGrade(against, reason);
  }

  return (
    <Screen
      title={item.ask}
      titleClass="question"
      back={{ href: homeOf(record.packId, item), label: place.homeTitle }}
      middle={<SmokeHelp record={record} />}
      end={
        <>
          <span class="saved">{place.position}</span>
          {item.safety && <span class="tag">{words.safety}</span>}
          {item.stop && <span class="tag">{words.stop}</span>}
        </>
      }
      {...(underTheLid(item) && { under: <SafetyLine session={session} /> })}
      dock={
        <>
          <SavedLine session={session} />
          <button
            type="button"
            class={photoWanted ? 'button primary' : 'button'}
            {...(photoWanted && { 'aria-description': itemWords.photoWanted })}
            onClick={() => setOver('photo')}
          >
            {itemWords.photo}
          </button>
          <button type="button" class="button" onClick={() => setOver('note')}>
            {note === '' ? itemWords.note : itemWords.noteFull}
          </button>
          <button type="button" class={photoWanted ? 'button' : 'button primary'} onClick={() => goTo(place.nextHref)}>
            {place.isLast ? itemWords.lastOne : itemWords.next}
          </button>
        </>
      }
      dockClass="two-rows even"
    >
      {stops.length > 0 && (
        <button type="button" class="notice stop-banner" onClick={() => setOver('stop')}>
          <strong>{stopWords.title}</strong> {stops.map(({ title }) => title).join(', ')}
        </button>
      )}
      {item.state === 'loaded' && <p class="notice calm small">{liveTestsWords.caution}</p>}
      <p class="muted">{item.look}</p>
      {note !== '' && <p class="own-note">{note}</p>}
      {item.lastChance && !answer && isStillThere(item.lastChance.leaving, record.state) && (
        <p class="small">{itemWords.lostIfLeft(item.lastChance.lost)}</p>
      )}
      {result?.because === 'factExcludes' && <p class="notice calm">{itemWords.excluded}</p>}
      {photos.length > 0 && <Thumbs packId={record.packId} photos={photos} title={item.title} />}

      <MeasuredPart
        item={item}
        result={result}
        answer={answer}
        owner={session.packId}
        testsHref={testsHref(record.packId, item)}
        onValue={(id, value) => void give(afterReading(answer, id, value), measuredWords.title)}
      />
      <ItemChoices
        {...{ item, answer, result, chosen, evidence }}
        onGrade={choose}
        onEvidence={(next) => {
          setPlanned(next);
          if (answer?.kind === 'grade') void give({ ...answer, evidence: next }, itemWords.evidence[next]);
        }}
        onOver={setOver}
      />
      <VoicePart key={item.id} session={session} on={{ kind: 'item', id: item.id }} />
      <ItemOverlays
        {...{ session, item, answer, over, stops }}
        onClose={() => setOver('none')}
        onReason={giveReason}
        onNote={(text) => {
          setOver('none');
          void give(afterNote(answer, text), itemWords.note);
        }}
        onClear={() => {
          setOver('none');
          void give(null, itemWords.clear);
        }}
      />
    </Screen>
  );
}

/** Not once the pack has left that state: then the chance is gone. */
function isStillThere(leaving: LidOffState, state: LidOffState | null): boolean {
  return state === null || LID_OFF_STATES.indexOf(state) <= LID_OFF_STATES.indexOf(leaving);
}

function underTheLid(item: Item): boolean {
  return !isClosed(item.state);
}

function wantsPhoto(item: Item, grade: Grade | null): boolean {
  if (item.photo === 'always') return true;
  return item.photo === 'fault' && (grade === 'weak' || grade === 'failed');
}
