import { useEffect, useState } from 'preact/hooks';
import { type SharedFile, sharedFile } from '../../storage/shared-in.ts';
import { formatMoment } from '../../text/format-day.ts';
import { utcOffsetMinutes } from '../clock.ts';

interface WaitingPhotoProps {
  file: SharedFile;
  ticked: boolean;
  onTick: (on: boolean) => void;
}

/** One photo in the tray, with its tick. One that the browser cannot show has its name alone. */
export function WaitingPhoto({ file, ticked, onTick }: WaitingPhotoProps) {
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let left = false;
    void sharedFile(file.id).then((found) => {
      if (found === null || left) return;
      made = URL.createObjectURL(found);
      setUrl(made);
    });
    return () => {
      left = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [file.id]);
  return (
    <label class="tick">
      <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.currentTarget.checked)} />
      <span class="waiting-photo">
        <span class="waiting-picture">{url && <img src={url} alt="" onError={() => setUrl(null)} />}</span>
        <span>
          {file.name}
          <br />
          <span class="small muted">{formatMoment(file.atMs, utcOffsetMinutes(file.atMs))}</span>
        </span>
      </span>
    </label>
  );
}
