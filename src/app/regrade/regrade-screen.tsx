import '../../ui/sheet/sheet.css';
import './regrade.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { keepWords } from '../../text/keep.ts';
import { regradeWords as say } from '../../text/regrade.ts';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { refreshBench } from '../state/bench.ts';
import { carryOverPacks } from './carry-over-packs.ts';
import { RegradePack } from './regrade-pack.tsx';
import { type Survey, surveyPacks } from './survey.ts';

type Step =
  | { now: 'looking'; done: number; all: number }
  | { now: 'carrying'; done: number; all: number }
  | { now: 'rest'; said: string[] };

/** Keep, re-grade: what a newer checklist would make of every pack, and why. Nothing is changed until it is asked for. */
export function RegradeScreen() {
  const [step, setStep] = useState<Step>({ now: 'looking', done: 0, all: 0 });
  const [survey, setSurvey] = useState<Survey | null>(null);
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [reason, setReason] = useState<string | null>(null);
  const abort = useRef(new AbortController());
  useEffect(() => {
    void look([]);
    return () => abort.current.abort();
  }, []);

  const packs = survey === null ? [] : [...survey.moved, ...survey.still];
  const chosen = packs.filter(({ packId }) => ticked.has(packId));
  const closedCount = chosen.filter(({ closed }) => closed).length;
  const why = reason ?? say.reasonDefault([...new Set(chosen.map(({ to }) => to.definition.version))]);
  const busy = step.now !== 'rest';

  async function look(said: string[]) {
    abort.current = new AbortController();
    const { signal } = abort.current;
    setStep({ now: 'looking', done: 0, all: 0 });
    await refreshBench();
    const found = await surveyPacks({ signal, onProgress: (done, all) => setStep({ now: 'looking', done, all }) });
    setSurvey(found);
    setTicked(new Set());
    setStep({ now: 'rest', said });
  }
  async function carry() {
    abort.current = new AbortController();
    const { signal } = abort.current;
    const { carriedCount, notSaved, changedMeanwhile } = await carryOverPacks(chosen, {
      reason: why,
      signal,
      onProgress: (done, all) => setStep({ now: 'carrying', done, all }),
    });
    await look([
      signal.aborted ? say.carriedSome(carriedCount, chosen.length) : say.carried(carriedCount),
      ...(notSaved === null ? [] : [say.notSaved(notSaved)]),
      ...(changedMeanwhile.length === 0 ? [] : [say.changedMeanwhile(changedMeanwhile.join(', '))]),
    ]);
  }
  function tick(ids: readonly string[], on: boolean) {
    const others = [...ticked].filter((id) => !ids.includes(id));
    setTicked(new Set(on ? [...others, ...ids] : others));
  }

  return (
    <Screen
      title={say.title}
      back={{ href: '#/keep', label: keepWords.title }}
      dock={
        busy ? (
          <button type="button" class="button" onClick={() => abort.current.abort()}>
            {say.stop}
          </button>
        ) : (
          packs.length > 0 && (
            <button
              type="button"
              class="button primary"
              disabled={chosen.length === 0 || (closedCount > 0 && why.trim() === '')}
              onClick={() => void carry()}
            >
              {chosen.length === 0 ? say.tickFirst : say.carry(chosen.length)}
            </button>
          )
        )
      }
    >
      <p class="muted">{say.lead}</p>
      {step.now === 'looking' && <p role="status">{say.looking(step.done, step.all)}</p>}
      {step.now === 'carrying' && <p role="status">{say.carrying(step.done, step.all)}</p>}
      {step.now === 'rest' &&
        step.said.map((sentence) => (
          <p key={sentence} class="notice calm" role="status">
            {sentence}
          </p>
        ))}
      {!busy && survey && <Found survey={survey} ticked={ticked} onTick={tick} onAgain={() => void look([])} />}
      {!busy && closedCount > 0 && (
        <section class="stack">
          <p class="small muted">{say.reasonHint(closedCount)}</p>
          <TextField
            id="regrade-reason"
            label={say.reason}
            value={why}
            onChange={setReason}
            lines="many"
            maxLength={2000}
          />
        </section>
      )}
    </Screen>
  );
}

interface FoundProps {
  survey: Survey;
  ticked: ReadonlySet<string>;
  onTick: (ids: readonly string[], on: boolean) => void;
  onAgain: () => void;
}

function Found({ survey, ticked, onTick, onAgain }: FoundProps) {
  const { moved, still, unread, lookedAt, all } = survey;
  const movedIds = moved.map(({ packId }) => packId);
  const stillIds = still.map(({ packId }) => packId);
  const newerCount = moved.length + still.length;
  return (
    <>
      {lookedAt < all && (
        <>
          <p class="notice calm">{say.stoppedAt(lookedAt, all)}</p>
          <button type="button" class="button" onClick={onAgain}>
            {say.again}
          </button>
        </>
      )}
      {lookedAt === all && newerCount + unread.length === 0 && <p>{say.noneNewer}</p>}
      {newerCount > 0 && (
        <p>
          {say.newer(newerCount)} {still.length > 0 && say.still(still.length)}
        </p>
      )}
      {unread.length > 0 && <p class="notice calm small">{say.unread(unread.join(', '))}</p>}
      {newerCount > 1 && (
        <div class="row">
          <button type="button" class="button" onClick={() => onTick([...movedIds, ...stillIds], true)}>
            {say.all}
          </button>
          <button type="button" class="button" onClick={() => onTick([...movedIds, ...stillIds], false)}>
            {say.none}
          </button>
        </div>
      )}
      {moved.length > 0 && (
        <ul class="lines">
          {moved.map((pack) => (
            <RegradePack
              key={pack.packId}
              pack={pack}
              ticked={ticked.has(pack.packId)}
              onTick={(on) => onTick([pack.packId], on)}
            />
          ))}
        </ul>
      )}
      {still.length > 0 && (
        <label class="tick">
          <input
            type="checkbox"
            checked={stillIds.every((id) => ticked.has(id))}
            onChange={(event) => onTick(stillIds, event.currentTarget.checked)}
          />
          <span>{say.stillTick(still.length)}</span>
        </label>
      )}
    </>
  );
}
