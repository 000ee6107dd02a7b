import { useState } from 'preact/hooks';
import { photoWords as say } from '../../text/photo-screens.ts';
import { trayWords } from '../../text/tray.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { zoneChoices } from '../photos/zone-choices.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { waiting } from '../tray/waiting.ts';

/** All photos of a pack, by where they belong. */
export function PhotosScreen({ session }: { session: PackSession }) {
  const [tray, setTray] = useState(false);
  const record = session.record.value;
  const groups = zoneChoices(session.definition.definition).map(({ id, text }) => ({
    id,
    text,
    photos: record.photos.filter(({ zone }) => zone === id),
  }));
  return (
    <Screen
      title={say.photosOf}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button primary" onClick={() => setTray(true)}>
            {say.add}
          </button>
        </>
      }
    >
      <ChoiceField
        label={say.originals}
        choices={[
          { id: 'no', text: say.originalsNo },
          { id: 'yes', text: say.originalsYes },
        ]}
        chosen={record.keepOriginals ? 'yes' : 'no'}
        onChoose={(id) =>
          void session.put({
            puts: [{ subject: 'pack', part: 'keepOriginals', v: id === 'yes' }],
            undoLabel: say.originals,
          })
        }
      />
      <p class="small muted">{say.originalsHint}</p>
      <a class="button quiet" href="#/tray">
        {trayWords.fromTray(waiting.value.length)}
      </a>
      {record.photos.length === 0 && <p class="muted">{say.none}</p>}
      {groups
        .filter(({ photos }) => photos.length > 0)
        .map(({ id, text, photos }) => (
          <section key={id} class="stack">
            <h2>{text}</h2>
            <Thumbs packId={record.packId} photos={photos} title={text} />
          </section>
        ))}
      {tray && (
        <PhotoTray
          session={session}
          zone={session.definition.definition.zones[0]?.id ?? 'arrival'}
          itemId={null}
          what={say.photosOf}
          onClose={() => setTray(false)}
          onAdded={([first, ...more]) => {
            setTray(false);
            if (first !== undefined && more.length === 0) goTo(hrefTo(record.packId, 'photo', `${first}/new`));
          }}
        />
      )}
    </Screen>
  );
}
