import type { RecordPhoto } from '../../record/pack-record.ts';
import { photoWords } from '../../text/photo-screens.ts';
import { usePhotoUrl } from '../photos/use-photo-url.ts';
import { hrefTo } from '../route.ts';

/** Photos as small squares that lead to the photo; the figure counts its callouts. */
export function Thumbs({ packId, photos, title }: { packId: string; photos: RecordPhoto[]; title: string }) {
  return (
    <ul class="thumbs">
      {photos.map((photo) => (
        <li key={photo.id}>
          <Thumb packId={packId} photo={photo} title={title} />
        </li>
      ))}
    </ul>
  );
}

function Thumb({ packId, photo, title }: { packId: string; photo: RecordPhoto; title: string }) {
  const url = usePhotoUrl(photo.id, 'thumbs');
  return (
    <a class="thumb" href={hrefTo(packId, 'photo', photo.id)}>
      {url && <img src={url} alt={photoWords.alt(photo.caption ?? title)} loading="lazy" />}
      {photo.callouts.length > 0 && <span class="count">{photo.callouts.length}</span>}
    </a>
  );
}
