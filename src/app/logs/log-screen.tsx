import { useState } from 'preact/hooks';
import { formatBytes } from '../../text/format-bytes.ts';
import { formatFixed } from '../../text/format-number.ts';
import { logWords as say } from '../../text/logs/log.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Screen } from '../../ui/screen.tsx';
import { InstrumentPicker } from '../live-tests/instrument-picker.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { FoundRuns } from './found-runs.tsx';
import { KeepButton } from './keep-button.tsx';
import { keptRuns } from './keep-runs.ts';
import type { LogInHand } from './log-in-hand.ts';
import { LogPlot } from './log-plot.tsx';
import { cancelled, putDown } from './logs-at-hand.ts';
import { MappingChange } from './mapping-change.tsx';
import { MappingRead } from './mapping-read.tsx';
import { RowsReport } from './rows-report.tsx';

/** One log at hand: how it was read, the whole of it drawn, the runs found, and what of them is to be kept. */
export function LogScreen({ session, log }: { session: PackSession; log: LogInHand }) {
  const [asking, setAsking] = useState(false);
  const [fileChanged, setFileChanged] = useState(false);
  const record = session.record.value;
  const { logId, name, byteCount } = log.file;
  const list = hrefTo(session.packId, 'live-test', 'log');
  const known = record.tests.logs.find(({ id }) => id === logId);
  const [instrumentId, setInstrumentId] = useState<string | null>(known?.instrumentId ?? null);
  const read = log.read.value;
  const fromIt = keptRuns(session, logId).length;

  function leave() {
    putDown();
    goTo(list, { replace: true });
  }
  /** Cancelled before anything could be shown: there is nothing to stay for. */
  function leaveUnread() {
    if (log.read.peek() !== null) return;
    leave();
    cancelled.value = name;
  }
  async function remove() {
    setAsking(false);
    const saved = await session.put({
      puts: [{ subject: 'log', part: logId, gone: true }],
      undoLabel: say.removed(name),
    });
    if (saved) leave();
  }
  return (
    <Screen
      title={name}
      titleClass="log-name"
      back={{ href: list, label: say.title }}
      middle={<SmokeHelp record={record} />}
      under={<Progress log={log} onCancelled={leaveUnread} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={leave}>
            {known ? say.close : say.putAside}
          </button>
          <KeepButton session={session} log={log} instrumentId={instrumentId} onFileChanged={setFileChanged} />
        </>
      }
    >
      <p class="small muted">
        {say.facts([
          formatBytes(byteCount),
          ...(read ? [say.rows(formatFixed(read.summary.rowCount, 0))] : []),
          ...(known ? [say.runsFrom(fromIt)] : []),
        ])}
      </p>
      <p class="small muted">{known ? say.known : say.inHand}</p>
      {fileChanged && (
        <p class="notice" role="alert">
          {say.changed}
        </p>
      )}
      {log.failed.value && (
        <div class="notice stack" role="alert">
          <p>{say.openFailed}</p>
          <button type="button" class="button" onClick={() => log.retry()}>
            {say.again}
          </button>
        </div>
      )}
      {read && (
        <>
          <MappingRead read={read} onChange={(mapping) => void log.change(mapping)} />
          {read.summary.counts.rowsRead > 0 && <RowsReport summary={read.summary} />}
          <LogPlot read={read} ticked={log.ticked.value} />
          <FoundRuns session={session} log={log} read={read} />
          {read.summary.runs.length > 0 && (
            <InstrumentPicker
              instruments={record.tests.instruments}
              chosen={instrumentId}
              onChoose={(id, also) => {
                setInstrumentId(id);
                if (also) void session.put({ puts: [...also] });
              }}
            />
          )}
          <MappingChange log={log} read={read} />
          {known && (
            <button type="button" class="button" onClick={() => setAsking(true)}>
              {say.remove}
            </button>
          )}
        </>
      )}
      {asking && (
        <Dialog title={say.remove} onClose={() => setAsking(false)}>
          <p>{say.removeAsk(fromIt)}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {say.removeNo}
            </button>
            <button type="button" class="button primary" onClick={() => void remove()}>
              {say.remove}
            </button>
          </div>
        </Dialog>
      )}
    </Screen>
  );
}

/** Stays in view while the file is read. */
function Progress({ log, onCancelled }: { log: LogInHand; onCancelled: () => void }) {
  const doneFrac = log.progress.value;
  if (doneFrac === null) return null;
  const share = `${formatFixed(Math.floor(doneFrac * 100), 0)}\u00a0%`;
  return (
    <div class="log-progress">
      <progress max={1} value={doneFrac} aria-label={say.reading('')} />
      <span class="small" role="status">
        {say.reading(share)}
      </span>
      <button
        type="button"
        class="button"
        onClick={() => {
          log.cancel();
          onCancelled();
        }}
      >
        {say.cancel}
      </button>
    </div>
  );
}
