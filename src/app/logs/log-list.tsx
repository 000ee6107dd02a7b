import { useRef, useState } from 'preact/hooks';
import { MAX_LOG_BYTES } from '../../storage/bundle/bundle-limits.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { formatFixed } from '../../text/format-number.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { runWords } from '../../text/live-tests/run.ts';
import { fileRefusals, logWords as say } from '../../text/logs/log.ts';
import { Screen } from '../../ui/screen.tsx';
import { logPlace } from '../live-tests/runs/log-place-id.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { keptRuns } from './keep-runs.ts';
import { keptMapping } from './kept-mapping.ts';
import { atHand, cancelled, endHelp, type Picked, pickedLog, takeInHand } from './logs-at-hand.ts';

/** The logs kept with a pack, and the way to bring one in. */
export function LogList({ session }: { session: PackSession }) {
  const box = useRef<HTMLInputElement>(null);
  const [opening, setOpening] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const record = session.record.value;
  const { logs } = record.tests;
  const here = atHand.value;
  const waiting =
    here?.packId === session.packId && logs.every(({ id }) => id !== here.log.file.logId) ? here.log : null;
  const at = (logId: string) => hrefTo(session.packId, 'live-test', logPlace(logId));

  async function take(file: File) {
    setOpening(true);
    setRefused(null);
    cancelled.value = null;
    const picked = await pickedLog(file);
    setOpening(false);
    if (!picked.ok) {
      setRefused(refusalSentence(picked.because, file));
      return;
    }
    const { logId } = picked.file;
    const known = logs.find(({ id }) => id === logId);
    const mapping = known ? keptMapping(keptRuns(session, logId).at(-1)?.log?.mapping) : null;
    const same = atHand.peek();
    const isHere = same?.packId === session.packId && same.log.file.logId === logId;
    if (!isHere) {
      takeInHand(session.packId, picked.file, { help: endHelp(record.nameplate), mapping });
    }
    goTo(at(logId));
  }

  return (
    <Screen
      title={say.title}
      back={{ href: hrefTo(session.packId, 'live-tests'), label: liveTestsWords.title }}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <a class="button" href={hrefTo(session.packId, 'live-test', 'run')}>
            {runWords.title}
          </a>
          <button
            type="button"
            class="button primary"
            {...(opening && { 'aria-disabled': true })}
            onClick={() => opening || box.current?.click()}
          >
            {opening ? say.opening : say.pick}
          </button>
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      {/* Any file may be picked: phones give logs the oddest types, and what is no log is refused by its content. */}
      <input
        ref={box}
        type="file"
        class="unseen"
        aria-label={say.pick}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = '';
          if (file) void take(file);
        }}
      />
      {refused !== null && (
        <p class="notice" role="alert">
          {refused}
        </p>
      )}
      {cancelled.value !== null && (
        <p class="notice calm" role="status">
          {say.cancelled(cancelled.value)}
        </p>
      )}
      <ul class={logs.length > 0 || waiting ? 'lines' : ''}>
        {logs.map((log) => (
          <LogLine
            key={log.id}
            href={at(log.id)}
            name={log.name}
            under={[
              formatBytes(log.byteCount),
              ...(log.rowCount === undefined ? [] : [say.rows(formatFixed(log.rowCount, 0))]),
              say.runsFrom(keptRuns(session, log.id).length),
            ]}
          />
        ))}
        {waiting && <LogLine href={at(waiting.file.logId)} name={waiting.file.name} under={[say.inHand]} />}
      </ul>
      {logs.length === 0 && !waiting && <p class="muted">{say.none}</p>}
    </Screen>
  );
}

function LogLine({ href, name, under }: { href: string; name: string; under: readonly string[] }) {
  return (
    <li>
      <a class="line log-line" href={href}>
        <span>
          <span class="title log-name">{name}</span>
          <br />
          <span class="small muted">{say.facts(under)}</span>
        </span>
        <span class="side">›</span>
      </a>
    </li>
  );
}

function refusalSentence(because: Extract<Picked, { ok: false }>['because'], { name, size }: File): string {
  if (because === 'unreadable') return say.unreadable(name);
  if (because === 'tooLarge') return fileRefusals.tooLarge(name, formatBytes(size), formatBytes(MAX_LOG_BYTES));
  return fileRefusals[because](name);
}
