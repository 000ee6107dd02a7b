import { useEffect, useState } from 'preact/hooks';
import { editingWords } from '../../text/live-tests/editing.ts';
import { logWords as say } from '../../text/logs/log.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { isAt } from '../live-tests/runs/log-place-id.ts';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { keptRuns } from './keep-runs.ts';
import { keptMapping } from './kept-mapping.ts';
import { LogList } from './log-list.tsx';
import { LogScreen } from './log-screen.tsx';
import { atHand, endHelp, keptLog, takeInHand } from './logs-at-hand.ts';
import './logs.css';

/** The logs of a pack, or the one that an address names: at hand, or kept and opened again. */
export function LogPlace({ session, testId }: { session: PackSession; testId: string }) {
  const here = atHand.value;
  if (testId === '') return <LogList session={session} />;
  if (here?.packId === session.packId && isAt(here.log.file.logId, testId)) {
    return <LogScreen key={testId} session={session} log={here.log} />;
  }
  return <OpenAgain key={testId} session={session} testId={testId} />;
}

/** A log that is not at hand: opened from this phone if it is kept. */
function OpenAgain({ session, testId }: { session: PackSession; testId: string }) {
  const record = session.record.value;
  const known = record.tests.logs.find(({ id }) => isAt(id, testId));
  const [missing, setMissing] = useState(known === undefined);
  const logId = known?.id;
  useEffect(() => {
    if (known === undefined) return;
    let left = false;
    void keptLog(known).then((file) => {
      if (left) return;
      if (file === null) setMissing(true);
      else {
        const mapping = keptMapping(keptRuns(session, known.id).at(-1)?.log?.mapping);
        takeInHand(session.packId, file, { help: endHelp(record.nameplate), mapping });
      }
    });
    return () => {
      left = true;
    };
  }, [logId]);
  const list = hrefTo(session.packId, 'live-test', 'log');
  return (
    <Screen
      title={known?.name ?? say.one}
      titleClass="log-name"
      back={{ href: list, label: say.title }}
      middle={<SmokeHelp record={record} />}
      dock={
        <a class="button primary" href={list}>
          {editingWords.done}
        </a>
      }
    >
      {missing ? (
        <p class="notice">{known === undefined ? say.notInHand : say.gone}</p>
      ) : (
        <p class="muted">{words.opening}</p>
      )}
    </Screen>
  );
}
