import type { Vanished } from '../../storage/store.ts';
import { benchWords as say } from '../../text/bench.ts';
import { formatMoment } from '../../text/format-day.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { photosInNoBackup } from '../state/bench.ts';
import { askPersistence, installNow, installPrompt, keeping } from '../state/keeping.ts';
import { loadNewer, newerReady, offlineReady } from '../state/newer-version.ts';
import { vanished } from '../state/vanished.ts';
import { waiting } from '../tray/waiting.ts';

/**
 * Photos in no backup from which on it is said. Our choice: a quarter of what one pack taken apart brings; said at every
 * first photo it would be passed over by the time it matters.
 */
const WORTH_SAYING = 8;

/** What must be said before any pack: records gone, a newer version, how to keep records, photos in no backup. */
export function BenchNotices({ empty }: { empty: boolean }) {
  const inNoBackup = photosInNoBackup.value;
  return (
    <>
      {vanished.value && <VanishedNotice {...vanished.value} />}
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
      {inNoBackup >= WORTH_SAYING && (
        <a class="button quiet wide" href="#/keep">
          {say.inNoBackup(inNoBackup)} {say.toBackup}
        </a>
      )}
      {waiting.value.length > 0 && (
        <a class="button quiet wide" href="#/tray">
          {say.inTray(waiting.value.length)}
        </a>
      )}
      {offlineReady.value && (
        <p class="small muted" role="status">
          ✓ {say.readyOffline}
        </p>
      )}
    </>
  );
}

/** The last backup by its name, one tap from being restored. */
function VanishedNotice({ since, packCount, lastBackup }: Vanished) {
  return (
    <div class="notice stack" role="alert">
      <p>{say.vanished(packCount, momentOf(since))}</p>
      {lastBackup === null ? (
        <p>{say.vanishedNoBackup}</p>
      ) : (
        <a class="button primary" href="#/keep/restore">
          {say.vanishedBackup(lastBackup.fileName, momentOf(lastBackup.at))}
        </a>
      )}
    </div>
  );
}

function momentOf(iso: string): string {
  const atMs = Date.parse(iso);
  return formatMoment(atMs, utcOffsetMinutes(atMs));
}
