import { useState } from 'preact/hooks';
import { arrivalWords } from '../../text/arrival.ts';
import { lidOffWords } from '../../text/item.ts';
import { photoWords } from '../../text/photo-screens.ts';
import { stopWords } from '../../text/stop.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { QuestionList } from '../parts/question-list.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { StopSteps } from '../parts/stop-steps.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { hrefOf } from '../question-place.ts';
import { questionsOf } from '../questions.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';

/** The closed pack looked over, before anything is connected to it. */
export function ArrivalScreen({ session }: { session: PackSession }) {
  const [tray, setTray] = useState(false);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const asking = { definition, record, grading };
  const arrival = questionsOf(asking, 'arrival');
  const facts = arrival.filter(({ kind }) => kind === 'fact');
  const items = arrival.filter(({ kind }) => kind === 'item');
  const stops = stopFindings(definition, grading);
  const next = arrival.find(({ open }) => open);
  const photos = record.photos.filter(({ zone }) => zone === 'arrival');

  return (
    <Screen
      title={arrivalWords.title}
      back={backToPack(record)}
      middle={<SmokeHelp record={record} />}
      end={<span class="saved">{words.countOf(arrival.filter(({ open }) => !open).length, arrival.length)}</span>}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => setTray(true)}>
            {lidOffWords.photoFirst}
          </button>
          <button
            type="button"
            class="button primary"
            disabled={next === undefined && stops.length > 0}
            onClick={() => goTo(next ? hrefOf(record.packId, next) : hrefTo(record.packId, 'live-tests'))}
          >
            {next ? arrivalWords.goOn : arrivalWords.toLiveTests}
          </button>
        </>
      }
    >
      {stops.length > 0 ? (
        <section class="stack">
          <h2>{stopWords.title}</h2>
          <StopSteps packId={record.packId} items={stops} />
        </section>
      ) : (
        <p class="muted">{arrivalWords.lead}</p>
      )}
      {facts.length > 0 && (
        <section class="stack">
          <h2>{arrivalWords.about}</h2>
          <QuestionList asking={asking} questions={facts} />
        </section>
      )}
      <section class="stack">
        <h2>{arrivalWords.items}</h2>
        <QuestionList asking={asking} questions={items} />
      </section>
      {photos.length > 0 && (
        <section class="stack">
          <h2>{photoWords.photosOf}</h2>
          <Thumbs packId={record.packId} photos={photos} title={arrivalWords.title} />
        </section>
      )}
      {tray && (
        <PhotoTray
          session={session}
          zone="arrival"
          itemId={null}
          what={arrivalWords.title}
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
