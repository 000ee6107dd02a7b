import { useState } from 'preact/hooks';
import { logWords as say } from '../../text/logs/log.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { keepPlan, keepRuns } from './keep-runs.ts';
import type { LogInHand } from './log-in-hand.ts';
import { putDown } from './logs-at-hand.ts';

interface KeepButtonProps {
  session: PackSession;
  log: LogInHand;
  instrumentId: string | null;
  onFileChanged: (changed: boolean) => void;
}

/** Writes log and runs, and says before how many are added and how many are read anew. */
export function KeepButton({ session, log, instrumentId, onFileChanged }: KeepButtonProps) {
  const [keeping, setKeeping] = useState(false);
  const { updated, added } = keepPlan(session, log);
  const count = updated.size + added.length;
  const ready = log.read.value !== null && log.progress.value === null && count > 0 && !keeping;

  async function keep() {
    if (!ready) return;
    setKeeping(true);
    const kept = await keepRuns(session, log, instrumentId);
    setKeeping(false);
    onFileChanged(kept === 'fileChanged');
    if (kept !== 'kept') return;
    putDown();
    goTo(hrefTo(session.packId, 'live-test', 'run'), { replace: true });
  }
  return (
    <button type="button" class="button primary" disabled={!ready} onClick={() => void keep()}>
      {label(updated.size, added.length)}
    </button>
  );
}

function label(updated: number, added: number): string {
  if (updated > 0) return added > 0 ? say.updateAndKeep(updated, added) : say.update(updated);
  return added > 0 ? say.keep(added) : say.keepNone;
}
