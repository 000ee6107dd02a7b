import { useEffect, useState } from 'preact/hooks';
import type { PackName } from '../../storage/store.ts';
import { checklistsWords as say } from '../../text/checklists.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Fold } from '../parts/fold.tsx';
import { cards } from '../state/bench.ts';
import { type ChecklistOnBoard, checklistsOnBoard, markLoaded } from '../state/checklists-on-board.ts';
import { problemOf } from '../state/kept.ts';
import { store } from '../state/store.ts';
import { ChecklistLine } from './checklist-line.tsx';
import { LoadChecklistPart } from './load-checklist-part.tsx';

interface Board {
  checklists: ChecklistOnBoard[];
  uses: Map<string, PackName[]>;
}

/** Every checklist on this phone, with what uses it; its file to begin one's own from, and the way in for that one. */
export function ChecklistsPart() {
  const [board, setBoard] = useState<Board | 'notRead' | null>(null);
  const [asking, setAsking] = useState<ChecklistOnBoard | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const packs = cards.value;

  async function read() {
    const [checklists, uses] = await Promise.all([checklistsOnBoard(), store().definitionUses()]);
    setBoard({ checklists, uses });
  }
  function readOrSay() {
    read().catch((error: unknown) => {
      console.warn('checklists: not read', error);
      setBoard('notRead');
    });
  }
  // A restore or a pack that goes changes what is here and what uses it.
  useEffect(readOrSay, [packs]);

  async function remove({ sha256, id, version }: ChecklistOnBoard) {
    setAsking(null);
    try {
      const removal = await store().removeDefinition(sha256);
      if (!removal.ok) return setSaid(inUse(id, version, removal.usedBy));
      await markLoaded(sha256, false);
      await read();
      setSaid(say.removed(id, version));
    } catch (error) {
      console.warn('checklist: not removed', error);
      setSaid(writeProblems[problemOf(error)]);
    }
  }

  if (board === null) return <Section />;
  if (board === 'notRead') {
    return (
      <Section>
        <p class="notice" role="alert">
          {say.notRead}
        </p>
      </Section>
    );
  }
  const { checklists, uses } = board;
  const lineOf = (one: ChecklistOnBoard) => (
    <li key={one.sha256}>
      <ChecklistLine
        checklist={one}
        useCount={uses.get(one.sha256)?.length ?? 0}
        otherThanBuiltIn={checklists.some((other) => other.origin === 'builtIn' && isNamesake(other, one))}
        onRemove={() => {
          const usedBy = uses.get(one.sha256);
          setSaid(usedBy === undefined ? null : inUse(one.id, one.version, usedBy));
          if (usedBy === undefined) setAsking(one);
        }}
      />
    </li>
  );
  const earlier = checklists.filter(({ id, origin }, at) =>
    checklists.slice(0, at).some((newer) => origin === 'builtIn' && newer.id === id),
  );
  return (
    <Section>
      <LoadChecklistPart onLoaded={readOrSay} />
      <p class="small muted">{say.lead}</p>
      <ul class="lines">{checklists.filter((one) => !earlier.includes(one)).map(lineOf)}</ul>
      {said !== null && (
        <p class="notice calm" role="status">
          {said}
        </p>
      )}
      {earlier.length > 0 && (
        <details>
          <summary class="line">
            <span class="title">{say.earlier(earlier.length)}</span>
          </summary>
          <ul class="lines">{earlier.map(lineOf)}</ul>
        </details>
      )}
      {asking && (
        <Dialog title={say.removeTitle(asking.title)} onClose={() => setAsking(null)}>
          <p>{say.removeAsk(asking.id, asking.version)}</p>
          <div class="row">
            <button type="button" class="button primary" onClick={() => setAsking(null)}>
              {words.cancel}
            </button>
            <button type="button" class="button" onClick={() => void remove(asking)}>
              {say.remove}
            </button>
          </div>
        </Dialog>
      )}
    </Section>
  );
}

function Section({ children }: { children?: preact.ComponentChildren }) {
  return (
    <Fold title={say.title} hint={say.hint} part="checklists">
      {children}
    </Fold>
  );
}

function inUse(id: string, version: string, usedBy: readonly PackName[]): string {
  return say.inUse(
    id,
    version,
    usedBy.map(({ name, sample }) => words.packLabel(name, sample)),
  );
}

function isNamesake(a: ChecklistOnBoard, b: ChecklistOnBoard): boolean {
  return a.id === b.id && a.version === b.version && a.sha256 !== b.sha256;
}
