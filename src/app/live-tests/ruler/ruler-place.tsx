import { useState } from 'preact/hooks';
import type { ImagePoint } from '../../../schema/callout.ts';
import { editingWords } from '../../../text/live-tests/editing.ts';
import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { RULER_POINTS } from '../../../ui/ruler/ruler-points.ts';
import { Screen } from '../../../ui/screen.tsx';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { ChoosePhoto } from '../../photos/choose-photo.tsx';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { Cautions } from '../cautions.tsx';
import { keepUnfinished, unfinishedTests } from '../unfinished.ts';
import { zoneRead } from '../zone-read.ts';
import { RulerList } from './ruler-list.tsx';
import { RulerScreen } from './ruler-screen.tsx';
import { pointsOf, pointsPut, tidiedPoints } from './ruler-state.ts';
import { SetPoints } from './set-points.tsx';

const KIND = 'ruler';
/** A photo with a ruler is taken to measure a lead. */
const READS = ['mainLeads'] as const;

/** The photo ruler: its list, or one distance: which photo, its points, then what they come to. */
export function RulerPlace({ session, testId }: { session: PackSession; testId: string }) {
  return testId === '' ? <RulerList session={session} /> : <OneRuler key={testId} session={session} id={testId} />;
}

function OneRuler({ session, id }: { session: PackSession; id: string }) {
  const record = session.record.value;
  const { packId } = record;
  const place = { packId, kindId: KIND, id };
  const rulerOf = () => session.record.value.tests.rulers.find((one) => one.id === id);
  const ruler = rulerOf();
  const begun = unfinishedTests(packId, KIND).value[id] as { photoId?: string; points?: ImagePoint[] } | undefined;
  const photo = record.photos.find((one) => one.id === (ruler?.photoId ?? begun?.photoId));
  const points = ruler ? pointsOf(ruler) : (begun?.points ?? []);
  const listHref = hrefTo(packId, 'live-test', KIND);
  // A stored one opens with what it comes to, a new one with its points.
  const [setting, setSetting] = useState(ruler === undefined);

  function take(points: ImagePoint[]) {
    if (!photo) return;
    const before = rulerOf();
    const put = pointsPut({ id, photoId: photo.id, before }, points);
    if (put !== null) {
      keepUnfinished(place, null);
      void session.put({ puts: [put], undoLabel: say.undo.points });
    } else {
      // A point taken back makes it none again: what is left of it waits among the unfinished.
      keepUnfinished(place, { photoId: photo.id, points });
      if (before) {
        void session.put({ puts: [{ subject: KIND, part: id, gone: true }], undoLabel: say.undo.points });
      }
    }
  }
  function later() {
    if (points.length === RULER_POINTS) return setSetting(false);
    if (points.length === 0) keepUnfinished(place, null);
    goTo(listHref);
  }
  async function remove() {
    const undoLabel = editingWords.deleted(say.one);
    await session.put({ puts: [{ subject: KIND, part: id, gone: true }], undoLabel });
    goTo(listHref, { replace: true });
  }
  if (!photo) {
    const zone = zoneRead(session.definition.definition, READS);
    return (
      <Screen
        title={ruler ? say.one : editingWords.newOne(say.one)}
        back={{ href: listHref, label: say.title }}
        middle={<SmokeHelp record={record} />}
        dock={
          <>
            {ruler && (
              <button type="button" class="button" onClick={() => void remove()}>
                {editingWords.delete}
              </button>
            )}
            <a class="button" href={listHref}>
              {editingWords.done}
            </a>
          </>
        }
      >
        {ruler ? (
          <p class="notice">{say.photoOut}</p>
        ) : (
          <>
            <Cautions lines={say.cautions} open />
            <p>{say.noPhoto}</p>
            <ChoosePhoto
              session={session}
              zone={zone}
              what={say.photoFor}
              onChoose={(photoId) => keepUnfinished(place, { photoId })}
            />
          </>
        )}
      </Screen>
    );
  }
  if (ruler && !setting) {
    return <RulerScreen session={session} ruler={ruler} photo={photo} onMove={() => setSetting(true)} />;
  }
  return (
    <SetPoints
      session={session}
      photo={photo}
      points={points}
      onPoints={(next) => take(tidiedPoints(points, next, photo))}
      onDone={later}
    />
  );
}
