import { calloutMarks } from '../../drawing/callouts.ts';
import type { SheetPhoto } from '../../sheet/model/sheet.ts';
import { DrawingView } from '../drawing-view.tsx';

/** A photo of the sheet with its callouts and legend. The picture is never changed: callouts lie over it. */
export function SheetPhotoFigure({ photo, url }: { photo: SheetPhoto; url: string | null }) {
  const drawing = calloutMarks({ callouts: photo.callouts, widthPx: photo.widthPx, heightPx: photo.heightPx });
  return (
    <figure class="sheet-photo">
      <div class="frame" style={{ aspectRatio: `${photo.widthPx} / ${photo.heightPx}` }}>
        {url && <img src={url} alt={photo.caption ?? photo.title} loading="lazy" />}
        <DrawingView drawing={drawing} />
      </div>
      {photo.legend.length > 0 && (
        <ol class="legend">
          {photo.legend.map(({ number, text }) => (
            <li key={number}>
              <strong>{number}</strong> <span>{text}</span>
            </li>
          ))}
        </ol>
      )}
      <figcaption class="small muted">{[photo.title, photo.caption].filter(Boolean).join(' · ')}</figcaption>
    </figure>
  );
}
