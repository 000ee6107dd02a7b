import { useState } from 'preact/hooks';
import type { RecordPhoto } from '../../record/pack-record.ts';
import { photoWords as say } from '../../text/photo-screens.ts';
import type { PackSession } from '../state/pack-session.ts';
import './choose-photo.css';
import { PhotoTray } from './photo-tray.tsx';
import { usePhotoUrl } from './use-photo-url.ts';
import { zoneChoices } from './zone-choices.ts';

interface ChoosePhotoProps {
  session: PackSession;
  /** Zone of a photo taken here, and words of what it is for. */
  zone: string;
  what: string;
  onChoose: (photoId: string) => void;
}

/** A photo of the pack to work on: a new one, or one that is there, the newest first. */
export function ChoosePhoto({ session, zone, what, onChoose }: ChoosePhotoProps) {
  const [tray, setTray] = useState(false);
  const { photos } = session.record.value;
  const zones = new Map(zoneChoices(session.definition.definition).map(({ id, text }) => [id, text]));
  return (
    <div class="stack">
      <button type="button" class="button" onClick={() => setTray(true)}>
        {say.takeOne}
      </button>
      {photos.length > 0 && (
        <>
          <p class="small muted">{say.orOneOfThese}</p>
          <ul class="thumbs">
            {photos.toReversed().map((photo) => (
              <li key={photo.id}>
                <PhotoButton photo={photo} zone={zones.get(photo.zone) ?? ''} onChoose={() => onChoose(photo.id)} />
              </li>
            ))}
          </ul>
        </>
      )}
      {tray && (
        <PhotoTray
          session={session}
          zone={zone}
          itemId={null}
          what={what}
          onClose={() => setTray(false)}
          onAdded={([first]) => {
            setTray(false);
            if (first !== undefined) onChoose(first);
          }}
        />
      )}
    </div>
  );
}

function PhotoButton({ photo, zone, onChoose }: { photo: RecordPhoto; zone: string; onChoose: () => void }) {
  const url = usePhotoUrl(photo.id, 'thumbs');
  return (
    <button type="button" class="thumb thumb-button" aria-label={say.alt(photo.caption ?? zone)} onClick={onChoose}>
      {url && <img src={url} alt="" loading="lazy" />}
    </button>
  );
}
