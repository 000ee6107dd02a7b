import { useState } from 'preact/hooks';
import { foundWords } from '../../text/logs/found.ts';
import { logWords as say } from '../../text/logs/log.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';
import { canBeKept } from './found-run.ts';
import { foundRunLines, foundRunTitle, kindNotes } from './found-run-words.ts';
import { keepPlan } from './keep-runs.ts';
import type { LogInHand, LogRead } from './log-in-hand.ts';

/** Pulse tests cut into hundreds of runs; more than a screenful at once helps nobody. Our choice. */
const SHOWN_AT_FIRST = 20;

/** The runs found, each with how it began and ended; those that can be kept are ticked. */
export function FoundRuns({ session, log, read }: { session: PackSession; log: LogInHand; read: LogRead }) {
  const [all, setAll] = useState(false);
  const { runs } = read.summary;
  if (read.summary.refused !== undefined) return null;
  const { updated, unmatched } = keepPlan(session, log);
  const kept = new Set(updated.values());
  const shown = all ? runs.length : Math.min(runs.length, SHOWN_AT_FIRST);
  return (
    <section class="stack">
      <h2>{say.runs}</h2>
      {runs.length === 0 ? <p class="muted">{say.noRuns}</p> : <p class="small muted">{say.tickLead}</p>}
      {kindNotes(runs).map((note) => (
        <p key={note} class="small muted">
          {note}
        </p>
      ))}
      {updated.size > 0 && <p class="notice calm small">{say.updateNote(updated.size)}</p>}
      {unmatched > 0 && <p class="notice small">{say.unmatched(unmatched)}</p>}
      <ul class="lines">
        {runs.slice(0, shown).map((run, place) => (
          <li key={place}>
            <FoundRun
              title={foundWords.numbered(place + 1, foundRunTitle(run))}
              lines={foundRunLines(runs, place, settings.value.units)}
              state={
                kept.has(place) ? 'kept' : !canBeKept(run) ? 'shown' : log.ticked.value.has(place) ? 'ticked' : 'open'
              }
              onTick={(on) => log.tick(place, on)}
            />
          </li>
        ))}
      </ul>
      {shown < runs.length && (
        <button type="button" class="button" onClick={() => setAll(true)}>
          {foundWords.showAll(runs.length)}
        </button>
      )}
    </section>
  );
}

interface FoundRunProps {
  title: string;
  lines: readonly string[];
  state: 'kept' | 'shown' | 'ticked' | 'open';
  onTick: (on: boolean) => void;
}

function FoundRun({ title, lines, state, onTick }: FoundRunProps) {
  const words = (
    <span class="stack found">
      <span class="title">
        {title}
        {state === 'kept' && <span class="mark">{say.isKept}</span>}
      </span>
      {lines.map((line) => (
        <span key={line} class="small muted">
          {line}
        </span>
      ))}
    </span>
  );
  if (state === 'kept' || state === 'shown') {
    return (
      <div class="tick plain">
        <span class="no-tick" aria-hidden="true" />
        {words}
      </div>
    );
  }
  return (
    <label class="tick">
      <input type="checkbox" checked={state === 'ticked'} onChange={(event) => onTick(event.currentTarget.checked)} />
      {words}
    </label>
  );
}
