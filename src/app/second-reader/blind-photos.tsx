import './second-reader.css';
import { useState } from 'preact/hooks';
import { calloutMarks } from '../../drawing/callouts.ts';
import type { RecordPhoto } from '../../record/pack-record.ts';
import { photoWords } from '../../text/photo-screens.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { DrawingView } from '../../ui/drawing-view.tsx';
import { usePhotoUrl } from '../photos/use-photo-url.ts';
import { CloserLook } from './closer-look.tsx';
import { coversOf } from './covers-of.ts';

/** Photos one at a time, without callouts and captions, which would give the grades away. Cover-ups stay covered. */
export function BlindPhotos({ photos }: { photos: readonly RecordPhoto[] }) {
  const [at, setAt] = useState(0);
  const [closer, setCloser] = useState(false);
  const place = Math.min(at, photos.length - 1);
  const photo = photos[place];
  const url = usePhotoUrl(photo?.id ?? null, 'photos');
  if (photo === undefined) return null;
  const name = say.photoOf(place + 1, photos.length);
  return (
    <div class="stack blind-photos">
      <button type="button" class="blind-photo" disabled={url === null} onClick={() => setCloser(true)}>
        <CoveredPhoto photo={photo} url={url} />
        <span class="unseen">{say.closer}</span>
      </button>
      <div class={photos.length === 1 ? 'row' : 'blind-photo-row'}>
        {photos.length > 1 && (
          <Turn label={say.earlier} sign="‹" disabled={place === 0} onTurn={() => setAt(place - 1)} />
        )}
        <button type="button" class="button" disabled={url === null} onClick={() => setCloser(true)}>
          {photos.length > 1 ? say.closerAt(name) : say.closer}
        </button>
        {photos.length > 1 && (
          <Turn label={say.later} sign="›" disabled={place === photos.length - 1} onTurn={() => setAt(place + 1)} />
        )}
      </div>
      {closer && url !== null && (
        <CloserLook title={name} photo={photo} photoUrl={url} onClose={() => setCloser(false)} />
      )}
    </div>
  );
}

interface TurnProps {
  label: string;
  sign: string;
  disabled: boolean;
  onTurn: () => void;
}

function Turn({ label, sign, disabled, onTurn }: TurnProps) {
  return (
    <button type="button" class="button" aria-label={label} disabled={disabled} onClick={onTurn}>
      {sign}
    </button>
  );
}

/** What is covered is never seen, not even before its cover is drawn: both come at once. */
function CoveredPhoto({ photo, url }: { photo: RecordPhoto; url: string | null }) {
  const { widthPx, heightPx } = photo;
  const covers = coversOf(photo);
  return (
    <span
      class={widthPx * 3 >= heightPx * 4 ? 'covered wide' : 'covered'}
      style={{ aspectRatio: `${widthPx} / ${heightPx}` }}
    >
      {url === null ? (
        <span class="muted">{photoWords.notHere}</span>
      ) : (
        <>
          <img src={url} alt={say.photoAlt} />
          {covers.length > 0 && <DrawingView drawing={calloutMarks({ callouts: covers, widthPx, heightPx })} />}
        </>
      )}
    </span>
  );
}
