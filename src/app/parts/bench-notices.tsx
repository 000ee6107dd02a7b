import { benchWords as say } from '../../text/bench.ts';
import { formatMoment } from '../../text/format-day.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { askPersistence, installNow, installPrompt, keeping } from '../state/keeping.ts';
import { loadNewer, newerReady, offlineReady } from '../state/newer-version.ts';
import { vanished } from '../state/vanished.ts';

/** What must be said before any pack: records gone, a photo that never came, a newer version, how to keep records. */
export function BenchNotices({ empty }: { empty: boolean }) {
  const gone = vanished.value;
  const sinceMs = gone ? Date.parse(gone.since) : 0;
  return (
    <>
      {gone && (
        <p class="notice" role="alert">
          {say.vanished(gone.packCount, formatMoment(sinceMs, utcOffsetMinutes(sinceMs)))}{' '}
          <a href="#/keep">{say.keep}</a>
        </p>
      )}
      {newerReady.value && (
        <div class="notice calm stack">
          <p>{say.newerVersion}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => (newerReady.value = false)}>
              {say.later}
            </button>
            <button type="button" class="button primary" onClick={loadNewer}>
              {say.loadNewer}
            </button>
          </div>
        </div>
      )}
      {empty && (installPrompt.value || keeping.value !== 'persisted') && (
        <div class="notice calm install-line">
          <p class="small">{say.install}</p>
          <div class="row">
            {installPrompt.value && (
              <button type="button" class="button" onClick={() => void installNow()}>
                {say.installNow}
              </button>
            )}
            {keeping.value === 'unknown' && (
              <button type="button" class="button" onClick={() => void askPersistence()}>
                {say.persistNow}
              </button>
            )}
          </div>
          {keeping.value === 'refused' && <p class="small">{say.persistRefused}</p>}
        </div>
      )}
      {offlineReady.value && (
        <p class="small muted" role="status">
          ✓ {say.readyOffline}
        </p>
      )}
    </>
  );
}
