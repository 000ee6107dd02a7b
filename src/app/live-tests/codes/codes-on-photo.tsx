import { useEffect, useState } from 'preact/hooks';
import { calloutMarks } from '../../../drawing/callouts.ts';
import type { CodeReading, FoundCode } from '../../../photos/read-codes.ts';
import type { RecordPhoto } from '../../../record/pack-record.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';
import { DrawingView } from '../../../ui/drawing-view.tsx';
import { usePhotoUrl } from '../../photos/use-photo-url.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { store } from '../../state/store.ts';
import { LONGEST_CODE } from './code-box.tsx';
import { codeGlance } from './code-glance.ts';
import { lookForCodes } from './codes-job.ts';
import { foundMarkPut } from './mark-put.ts';

type Looked = CodeReading | { ok: null; closer: boolean } | { ok: false; because: 'notHere' };

/** The codes on one photo, numbered where they stand, each to be kept as an entry of its own. */
export function CodesOnPhoto({ session, photo, onOther }: CodesOnPhotoProps) {
  const url = usePhotoUrl(photo.id, 'photos');
  const [closer, setCloser] = useState(false);
  const [looked, setLooked] = useState<Looked>({ ok: null, closer: false });

  useEffect(() => {
    let stop: (() => void) | null = null;
    let left = false;
    setLooked({ ok: null, closer });
    void store()
      .photo(photo.id)
      .then(async (content) => {
        if (left) return;
        if (content === null) return setLooked({ ok: false, because: 'notHere' });
        const job = lookForCodes(new Blob([content.bytes], { type: content.type }), { closer });
        stop = job.stop;
        const reading = await job.reading;
        if (!left) setLooked(reading);
      });
    return () => {
      left = true;
      stop?.();
    };
  }, [photo.id, closer]);

  const codes = looked.ok ? looked.codes : [];
  const keptTexts = session.record.value.tests.cellMarks
    .filter(({ photoId }) => photoId === photo.id)
    .map(({ text }) => text);
  const toKeep = codes.filter(({ text }) => text.length <= LONGEST_CODE && !keptTexts.includes(text));
  function keep(found: readonly FoundCode[]) {
    const puts = found.map((code) => foundMarkPut(code, photo.id));
    void session.put({ puts, undoLabel: say.undoKept(puts.length) });
  }
  return (
    <section class="stack" aria-label={say.onPhoto}>
      <h2>{say.onPhoto}</h2>
      <div class="photo-with-marks" style={{ aspectRatio: `${photo.widthPx} / ${photo.heightPx}` }}>
        {url && <img src={url} alt="" width={photo.widthPx} height={photo.heightPx} />}
        <DrawingView
          drawing={calloutMarks({
            callouts: codes.map(({ at }, place) => ({ kind: 'leader', points: [at], number: place + 1 })),
            widthPx: photo.widthPx,
            heightPx: photo.heightPx,
          })}
        />
      </div>
      <p role="status" class={looked.ok === false || (looked.ok && codes.length === 0) ? 'notice' : 'muted'}>
        {lookedWords(looked)}
      </p>
      <ol class="lines">
        {codes.map((code, place) => (
          <li key={code.text} class="found-code">
            <span class="callout-ring">{place + 1}</span>
            <span>
              <span class="code-text">{code.text}</span>
              <br />
              <span class="small muted">
                {say.symbologies[code.symbology] ?? code.symbology}, {codeGlance(code.text)}
              </span>
            </span>
            {code.text.length > LONGEST_CODE ? (
              <span class="small">{say.tooLong(code.text.length)}</span>
            ) : keptTexts.includes(code.text) ? (
              <span class="small muted">✓ {say.kept}</span>
            ) : (
              <button type="button" class="button" aria-label={say.keepOf(place + 1)} onClick={() => keep([code])}>
                {say.keep}
              </button>
            )}
          </li>
        ))}
      </ol>
      {toKeep.length > 1 && (
        <button type="button" class="button" onClick={() => keep(toKeep)}>
          {say.keepAll(toKeep.length)}
        </button>
      )}
      <div class="row">
        <button type="button" class="button" onClick={onOther}>
          {say.otherPhoto}
        </button>
        <button type="button" class="button" disabled={closer || looked.ok === null} onClick={() => setCloser(true)}>
          {say.closer}
        </button>
      </div>
    </section>
  );
}

interface CodesOnPhotoProps {
  session: PackSession;
  photo: RecordPhoto;
  onOther: () => void;
}

function lookedWords(looked: Looked): string {
  if (looked.ok === null) return looked.closer ? say.lookingCloser : say.looking;
  if (looked.ok) return looked.codes.length === 0 ? say.nothing : say.found(looked.codes.length);
  return { noReader: say.cannot, cannotDecode: say.damaged, notHere: say.gone }[looked.because];
}
