import { rulerMarks } from '../../../drawing/ruler-marks.ts';
import { rulerResults } from '../../../grading/live-tests/ruler-results.ts';
import type { PackRecord, RecordPhoto } from '../../../record/pack-record.ts';
import { randomId } from '../../../storage/open-store.ts';
import { cellCodeWords } from '../../../text/live-tests/cell-code.ts';
import { rulerStageWords, rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { DrawingView } from '../../../ui/drawing-view.tsx';
import { goTo, hrefTo } from '../../route.ts';
import { settings } from '../../state/settings.ts';
import { keepUnfinished } from '../unfinished.ts';
import { distanceWords } from './ruler-words.ts';

interface PhotoRulersProps {
  record: Pick<PackRecord, 'packId' | 'tests' | 'photos'>;
  photo: RecordPhoto;
}

/** The distances taken from a photo, drawn over it. */
export function PhotoRulers({ record, photo, only }: PhotoRulersProps & { only?: string }) {
  const { units } = settings.value;
  const rulers = rulerResults(record)
    .filter(({ ruler }) => ruler.photoId === photo.id && (only === undefined || ruler.id === only))
    .map(({ ruler, distance }) => ({
      corners: ruler.corners,
      ends: [ruler.from, ruler.to],
      cardText: rulerStageWords.longSide,
      text: distance === null ? '' : distanceWords(distance, units),
    }));
  if (rulers.length === 0) return null;
  return <DrawingView drawing={rulerMarks({ rulers, widthPx: photo.widthPx, heightPx: photo.heightPx })} />;
}

/** Beside a photo: what was measured on it, and the ways to measure and to read codes on it. */
export function PhotoTools({ record, photo }: PhotoRulersProps) {
  const { packId } = record;
  const { units } = settings.value;
  const measured = rulerResults(record).filter(({ ruler }) => ruler.photoId === photo.id);
  function begin(kindId: 'ruler' | 'code') {
    const id = randomId();
    keepUnfinished({ packId, kindId, id }, { photoId: photo.id });
    goTo(hrefTo(packId, 'live-test', `${kindId}/${id}`));
  }
  return (
    <section class="stack">
      <h2>{say.tools}</h2>
      {measured.length > 0 && (
        <ul class="lines" aria-label={say.measured}>
          {measured.map(({ ruler, distance }) => (
            <li key={ruler.id}>
              <a class="line" href={hrefTo(packId, 'live-test', `ruler/${ruler.id}`)}>
                <span />
                <span>
                  <span class="title">{distanceWords(distance, units)}</span>
                  {ruler.label !== undefined && <span class="small muted"> {ruler.label}</span>}
                </span>
                <span class="side">›</span>
              </a>
            </li>
          ))}
        </ul>
      )}
      <div class="row">
        <button type="button" class="button" onClick={() => begin('ruler')}>
          {say.measure}
        </button>
        <button type="button" class="button" onClick={() => begin('code')}>
          {cellCodeWords.readCodes}
        </button>
      </div>
    </section>
  );
}
