import { useState } from 'preact/hooks';
import { localDay } from '../../text/format-day.ts';
import { startWords as say } from '../../text/start.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { saveFile } from '../save-file.ts';
import { loadNewer, newerReady } from '../state/newer-version.ts';

/** Instead of every screen, when the records cannot be opened: why, and what can still be done with them. */
export function NoRecords({ problem }: { problem: keyof typeof say.problems }) {
  const newer = newerReady.value;
  return (
    <div class="screen">
      <div class="head-row" />
      <main class="body">
        <h1>{say.title}</h1>
        <p class="notice" role="alert">
          {say.problems[problem]}
        </p>
        <button
          type="button"
          class="button primary"
          onClick={() => {
            if (newer) loadNewer();
            else location.reload();
          }}
        >
          {newer ? say.loadNewer : say.again}
        </button>
        {(problem === 'newer' || problem === 'migrationFailed') && <RawPart />}
      </main>
    </div>
  );
}

/** The records are there: they can at least be carried away as they lie. */
function RawPart() {
  const [said, setSaid] = useState<string | null>(null);
  async function save() {
    setSaid(say.rawBusy);
    try {
      const { rawRecords } = await import('../../storage/raw-records.ts');
      const { text, entryCount } = await rawRecords();
      const nowMs = Date.now();
      const day = localDay(nowMs, utcOffsetMinutes(nowMs));
      saveFile(new Blob([text], { type: 'application/json' }), `underlid-raw-${day}.json`);
      setSaid(say.rawSaved(entryCount));
    } catch (error) {
      console.error('records: not read as they are', error);
      setSaid(say.rawFailed);
    }
  }
  return (
    <section class="stack">
      <p class="small muted">{say.rawHint}</p>
      <button type="button" class="button" onClick={() => void save()}>
        {say.raw}
      </button>
      {said && <p role="status">{said}</p>}
    </section>
  );
}
