import { useState } from 'preact/hooks';
import type { ItemResult } from '../../grading/grading.ts';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import { EVIDENCE, type Evidence, GRADES, type Grade } from '../../schema/grade.ts';
import { LID_OFF_STATES, type LidOffState } from '../../schema/pack-states.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { itemWords } from '../../text/item.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { measuredWords } from '../../text/measured.ts';
import { stopWords } from '../../text/stop.ts';
import { words } from '../../text/words.ts';
import { AnswerButton } from '../../ui/answer-button.tsx';
import { Dialog } from '../../ui/dialog.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { testsHref } from '../live-tests/tests-href.ts';
import { MeasuredPart } from '../parts/measured-part.tsx';
import { NoteDialog } from '../parts/note-dialog.tsx';
import { ReasonDialog } from '../parts/reason-dialog.tsx';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { StopSteps } from '../parts/stop-steps.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { WhyDialog } from '../parts/why-dialog.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { homeOf, placeAmong } from '../question-place.ts';
import { isClosed } from '../questions.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';

type Over = 'none' | 'overrule' | 'notSeen' | 'doesNotApply' | 'why' | 'note' | 'photo' | 'stop';

/** One item: its question, its sentences as big choices, and what goes with the answer. */
export function ItemScreen({ session, item }: { session: PackSession; item: Item }) {
  const [over, setOver] = useState<Over>('none');
  const [planned, setPlanned] = useState<Evidence | null>(null);
  /** The grade that is to count against what was measured, while its reason is asked for. */
  const [against, setAgainst] = useState<Grade | null>(null);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const asking = { definition, record, grading };
  const answer = record.answers[item.id];
  const result = grading.items.find(({ itemId }) => itemId === item.id);
  const place = placeAmong(asking, { kind: 'item', item, open: false });
  const photos = record.photos.filter(({ itemIds }) => itemIds.includes(item.id));
  const chosen = result?.measured ? result.grade : answer?.kind === 'grade' ? answer.grade : null;
  const note = answer?.note ?? '';
  const stops = stopFindings(definition, grading);
  const photoWanted = photos.length === 0 && wantsPhoto(item, chosen);

  const evidence = answer?.kind === 'grade' || answer?.kind === 'readings' ? answer.evidence : planned;

  async function give(next: Answer, label: string) {
    await session.put({ puts: [{ subject: 'answer', part: item.id, v: next }], undoLabel: `${item.title}: ${label}` });
  }
  // What the live tests measured applies.
  const isTested = item.derive !== undefined && (result?.measured ?? null) !== null;

  async function choose(grade: Grade) {
    if (isAgainstMeasured(result, grade)) {
      setAgainst(grade);
      setOver('overrule');
      return;
    }
    await giveGrade(grade, null);
  }
  /** A grade chosen against what was measured counts with its reason; both are kept and printed. */
  async function giveGrade(grade: Grade, because: string | null) {
    setOver('none');
    const keepsReadings = answer?.kind === 'readings' && result?.measured;
    const next = keepsReadings
      ? withOverruled(answer, because === null ? null : { grade, because })
      : {
          kind: 'grade' as const,
          grade,
          // A claim counts against no measurement: whoever overrules one has seen why.
          evidence: because !== null && evidence === 'told' ? 'seen' : (evidence ?? 'seen'),
          ...(because !== null && { overrules: because }),
          ...(note !== '' && { note }),
        };
    await give(next, GRADE_WORDS[grade]);
    if (item.stop && grade === 'failed') setOver('stop');
  }
  async function keepReading(id: string, value: number | null) {
    const before = answer?.kind === 'readings' ? answer.values : {};
    const { [id]: _old, ...others } = before;
    const values = value === null ? others : { ...others, [id]: value };
    if (Object.keys(values).length === 0) await (note === '' ? clear() : give({ kind: 'open', note }, item.title));
    else {
      const overruled = answer?.kind === 'readings' ? answer.overruled : undefined;
      await give(
        {
          kind: 'readings',
          values,
          evidence: 'measured',
          ...(overruled && { overruled }),
          ...(note !== '' && { note }),
        },
        measuredWords.title,
      );
    }
  }
  async function clear() {
    setOver('none');
    await session.put({
      puts: [{ subject: 'answer', part: item.id, gone: true }],
      undoLabel: `${item.title}: ${itemWords.clear}`,
    });
  }
  async function keepNote(text: string) {
    setOver('none');
    const { note: _old, ...rest } = answer ?? { kind: 'open' as const, note: '' };
    if (rest.kind === 'open' && text === '') await clear();
    else if (rest.kind === 'open') await give({ kind: 'open', note: text }, itemWords.note);
    else await give({ ...rest, ...(text !== '' && { note: text }) } as Answer, itemWords.note);
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
        onValue={(id, value) => void keepReading(id, value)}
      />

      <p class="push small muted">{itemWords.worstCounts}</p>
      <div class="answers" role="radiogroup" aria-label={item.ask}>
        {GRADES.flatMap((grade) => {
          const sentence = item.grades[grade];
          return sentence === undefined
            ? []
            : [
                <AnswerButton
                  key={grade}
                  grade={grade}
                  sentence={sentence}
                  chosen={chosen === grade}
                  onChoose={() => void choose(grade)}
                />,
              ];
        })}
      </div>
      <div class="row">
        <button
          type="button"
          class="choice"
          aria-pressed={answer?.kind === 'notSeen'}
          onClick={() => setOver('notSeen')}
        >
          {itemWords.notSeen}
        </button>
        {item.mayNotApply.length > 0 && !isTested && (
          <button
            type="button"
            class="choice"
            aria-pressed={answer?.kind === 'doesNotApply'}
            onClick={() => setOver('doesNotApply')}
          >
            {itemWords.doesNotApply}
          </button>
        )}
        <button type="button" class="choice" onClick={() => setOver('why')}>
          {itemWords.whyItMatters}
        </button>
      </div>
      {result?.because !== 'measured' && (
        <EvidenceChoice
          evidence={evidence}
          onChoose={(next) => {
            setPlanned(next);
            if (answer?.kind === 'grade') void give({ ...answer, evidence: next }, itemWords.evidence[next]);
          }}
        />
      )}
      <p class="small slot" role="status">
        {said(answer, result)}
      </p>

      {over === 'overrule' && against !== null && (
        <ReasonDialog
          title={measuredWords.overruleTitle}
          reasons={measuredWords.overruleReasons}
          onClose={() => setOver('none')}
          onReason={(reason) => void giveGrade(against, reason)}
        />
      )}
      {over === 'notSeen' && (
        <ReasonDialog
          title={itemWords.notSeenTitle}
          reasons={itemWords.notSeenReasons}
          {...(answer && { onClear: () => void clear() })}
          onClose={() => setOver('none')}
          onReason={(reason) => {
            setOver('none');
            void give({ kind: 'notSeen', reason, ...(note !== '' && { note }) }, itemWords.notSeen);
          }}
        />
      )}
      {over === 'doesNotApply' && (
        <ReasonDialog
          title={itemWords.doesNotApplyTitle}
          reasons={item.mayNotApply}
          {...(answer && { onClear: () => void clear() })}
          onClose={() => setOver('none')}
          onReason={(reason) => {
            setOver('none');
            void give({ kind: 'doesNotApply', reason, ...(note !== '' && { note }) }, itemWords.doesNotApply);
          }}
        />
      )}
      {over === 'why' && (
        <WhyDialog item={item} {...(answer && { onClear: () => void clear() })} onClose={() => setOver('none')} />
      )}
      {over === 'note' && (
        <NoteDialog note={note} onKeep={(text) => void keepNote(text)} onClose={() => setOver('none')} />
      )}
      {over === 'photo' && (
        <PhotoTray
          session={session}
          zone={item.zone}
          itemId={item.id}
          what={item.title}
          onClose={() => setOver('none')}
          onAdded={(ids) => {
            setOver('none');
            const only = ids.length === 1 ? ids[0] : undefined;
            if (only !== undefined) goTo(hrefTo(record.packId, 'photo', `${only}/${item.id}`));
          }}
        />
      )}
      {over === 'stop' && (
        <Dialog title={stopWords.title} whole onClose={() => setOver('none')}>
          <StopSteps packId={record.packId} items={stops} onCorrect={() => setOver('none')} />
        </Dialog>
      )}
    </Screen>
  );
}

/** One line below the answers, always there so that nothing moves: why it is not graded, or what became of the grade. */
function said(answer: Answer | undefined, result: ItemResult | undefined): string {
  if (answer?.kind === 'notSeen' || answer?.kind === 'doesNotApply') return answer.reason;
  if (result?.loweredByTold) return itemWords.toldSafety;
  return answer?.kind === 'grade' && answer.unlooked ? itemWords.unlooked : '';
}

function EvidenceChoice({ evidence, onChoose }: { evidence: Evidence | null; onChoose: (evidence: Evidence) => void }) {
  return (
    <ChoiceField
      label={itemWords.how}
      choices={EVIDENCE.map((id) => ({ id, text: itemWords.evidence[id] }))}
      chosen={evidence}
      onChoose={onChoose}
    />
  );
}

/** Of what was measured only other grades are possible. */
function isAgainstMeasured(result: ItemResult | undefined, grade: Grade): boolean {
  return result?.measured != null && !result.measured.possible.includes(grade);
}

type Readings = Extract<Answer, { kind: 'readings' }>;

function withOverruled(answer: Readings, overruled: Readings['overruled'] | null): Answer {
  const { overruled: _old, ...rest } = answer;
  return overruled ? { ...rest, overruled } : rest;
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
