import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { closedWords as say } from '../../text/closed.ts';
import { words, writeProblems } from '../../text/words.ts';
import { saveFile } from '../save-file.ts';
import { closedRecords } from '../state/closed-records.ts';
import { leaveBehind } from '../state/left-behind.ts';
import { reach } from '../state/reach-records.ts';
import { allUnsaved, isPackShown } from '../state/unsaved-sessions.ts';
import { typedText } from '../typed-text.ts';
import { unsavedLines } from '../unsaved-lines.ts';
import { TextToCopy } from './text-to-copy.tsx';

/** Over every screen, at once, when the records can no longer be reached: why, what is not saved, and how to go on. */
export function RecordsClosed() {
  const because = closedRecords.value;
  return because && <Closed because={because} />;
}

function Closed({ because }: { because: 'old' | 'closed' }) {
  // Before this lies over it: what stands in boxes that had not come to rest.
  const [typed] = useState(() => typedText(document));
  const [said, setSaid] = useState<string | null>(null);
  const [gone, setGone] = useState<number | null>(null);
  const changes = allUnsaved();
  const lines = unsavedLines(changes);
  const text = [...lines, ...typed.filter(({ value }) => !lines.some((line) => line.includes(value))).map(({ name, value }) => `${name}: ${value}`)].join('\n'); // biome-ignore format: one list
  const photos = changes.flatMap((change) => (change.photos ?? []).filter(({ shelf }) => shelf === 'photos'));

  async function again() {
    const reached = await reach();
    if (reached === 'notYet') setSaid(say.stillClosed);
    else if (reached !== 'open') setGone(reached.packCount);
  }
  async function write() {
    const { writeBack } = await import('../state/write-back.ts');
    const problem = await writeBack();
    if (problem !== null) setSaid(writeProblems[problem]);
  }
  function load() {
    if (text !== '') leaveBehind(text);
    location.reload();
  }
  return (
    <OverEverything title={say.title[because]}>
      <p>{gone === null ? say[because] : say.cleared(gone)}</p>
      {gone !== null && isPackShown() && <p>{say.held}</p>}
      {text === '' ? <p class="muted small">{say.nothing}</p> : <TextToCopy label={say.notSaved} text={text} />}
      {photos.map(({ sha256, content }, index) => (
        <button
          key={sha256}
          type="button"
          class="button"
          onClick={() => saveFile(new Blob([content.bytes], { type: content.type }), `${sha256.slice(0, 12)}.jpg`)}
        >
          {say.savePhoto(index + 1)}
        </button>
      ))}
      {text !== '' && <p class="muted small">{say.keptFor}</p>}
      {said && (
        <p class="notice" role="alert">
          {said}
        </p>
      )}
      <div class="row">
        {because === 'closed' && gone === null && (
          <button type="button" class="button primary" onClick={() => void again()}>
            {words.tryAgain}
          </button>
        )}
        {gone !== null && (
          <button type="button" class="button primary" onClick={() => void write()}>
            {isPackShown() ? say.writeBack : say.goOn}
          </button>
        )}
        <button type="button" class={because === 'old' ? 'button primary' : 'button'} onClick={load}>
          {say.again}
        </button>
      </div>
    </OverEverything>
  );
}

/** Cannot be waved away: there is nothing behind it that would still be written. */
export function OverEverything({ title, children }: { title: string; children: ComponentChildren }) {
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => element.current?.showModal(), []);
  return (
    <dialog ref={element} class="over" aria-label={title} onCancel={(event) => event.preventDefault()}>
      <div class="stack">
        <h2 tabIndex={-1} autofocus>
          {title}
        </h2>
        {children}
      </div>
    </dialog>
  );
}
