import { useState } from 'preact/hooks';
import { restIsSound } from '../../grading/rest-is-sound.ts';
import type { Zone } from '../../schema/checklist.ts';
import { LID_OFF_STATES, type LidOffState } from '../../schema/pack-states.ts';
import { lidOffWords, stateWords, zoneWords } from '../../text/item.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Screen } from '../../ui/screen.tsx';
import { QuestionList } from '../parts/question-list.tsx';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { hrefOf } from '../question-place.ts';
import { questionsOf } from '../questions.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** One zone under the lid: what is asked in the present state, then what is left of other states, and its photos. */
export function ZoneScreen({ session, zone, state }: { session: PackSession; zone: Zone; state: LidOffState }) {
  const [over, setOver] = useState<'none' | 'rest' | 'photo'>('none');
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const asking = { definition, record, grading };
  const now = questionsOf(asking, state, zone.id);
  const others = LID_OFF_STATES.filter((other) => other !== state).map((other) => ({
    other,
    questions: questionsOf(asking, other, zone.id),
  }));
  const left = LID_OFF_STATES.slice(0, LID_OFF_STATES.indexOf(state)).flatMap((earlier) =>
    questionsOf(asking, earlier, zone.id).filter(({ open }) => open),
  );
  const next = [...now, ...left].find(({ open }) => open);
  const rest = restIsSound(definition, record, { zoneId: zone.id, state });
  const photos = record.photos.filter((photo) => photo.zone === zone.id);

  function answerRest() {
    setOver('none');
    const puts = rest.map((itemId) => {
      const note = record.answers[itemId]?.note;
      const kept = note === undefined || note === '' ? {} : { note };
      return {
        subject: 'answer',
        part: itemId,
        v: { kind: 'grade', grade: 'sound', evidence: 'seen', unlooked: true, ...kept },
      };
    });
    void session.put({ puts, undoLabel: zoneWords.restIsSound(rest.length) });
  }

  return (
    <Screen
      title={zone.title}
      quiet={stateWords[state]}
      back={{ href: hrefTo(record.packId, 'lid-off'), label: lidOffWords.title }}
      middle={<SmokeHelp record={record} />}
      end={
        now.length > 0 && <span class="saved">{words.countOf(now.filter(({ open }) => !open).length, now.length)}</span>
      }
      under={<SafetyLine session={session} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => setOver('photo')}>
            {lidOffWords.photoFirst}
          </button>
          <button
            type="button"
            class="button primary"
            onClick={() => goTo(next ? hrefOf(record.packId, next) : hrefTo(record.packId, 'lid-off'))}
          >
            {next ? lidOffWords.goOn : words.done}
          </button>
        </>
      }
    >
      {now.length > 0 ? (
        <QuestionList asking={asking} questions={now} />
      ) : (
        <p class="muted">{zoneWords.nothingNow(stateWords[state])}</p>
      )}
      {left.length > 0 && (
        <section class="stack">
          <h2>{zoneWords.leftOpen}</h2>
          <p class="small muted">{zoneWords.leftOpenHint}</p>
          <QuestionList asking={asking} questions={left} />
        </section>
      )}
      {rest.length > 0 && (
        <button type="button" class="button" onClick={() => setOver('rest')}>
          {zoneWords.restIsSound(rest.length)}
        </button>
      )}
      {others
        .filter(({ questions }) => questions.length > 0)
        .map(({ other, questions }) => (
          <details key={other}>
            <summary class="line plain">
              <span class="muted">
                {zoneWords.inState(stateWords[other], questions.filter(({ open }) => open).length, questions.length)}
              </span>
            </summary>
            <QuestionList asking={asking} questions={questions} />
          </details>
        ))}
      {photos.length > 0 && (
        <section class="stack">
          <h2>{zoneWords.photos}</h2>
          <Thumbs packId={record.packId} photos={photos} title={zone.title} />
        </section>
      )}
      {over === 'rest' && (
        <Dialog title={zoneWords.restIsSound(rest.length)} onClose={() => setOver('none')}>
          <p>{zoneWords.restIsSoundAsk(rest.length)}</p>
          <ul class="small muted">
            {rest.map((id) => (
              <li key={id}>{definition.items.find((item) => item.id === id)?.title}</li>
            ))}
          </ul>
          <div class="row">
            <button type="button" class="button" onClick={() => setOver('none')}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={answerRest}>
              {zoneWords.restIsSoundNow}
            </button>
          </div>
        </Dialog>
      )}
      {over === 'photo' && (
        <PhotoTray
          session={session}
          zone={zone.id}
          itemId={null}
          what={zone.title}
          onClose={() => setOver('none')}
          onAdded={([first]) => {
            setOver('none');
            if (first !== undefined) goTo(hrefTo(record.packId, 'photo', `${first}/new`));
          }}
        />
      )}
    </Screen>
  );
}
