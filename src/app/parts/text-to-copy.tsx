import { useRef, useState } from 'preact/hooks';
import { closedWords as say } from '../../text/closed.ts';

/** Text that must not be lost: readable whole, selectable, and copied by one tap where the browser allows it. */
export function TextToCopy({ label, text }: { label: string; text: string }) {
  const box = useRef<HTMLTextAreaElement>(null);
  const [said, setSaid] = useState<string | null>(null);

  async function copy() {
    box.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      setSaid(say.copied);
    } catch (error) {
      console.warn('copy: refused', error);
      setSaid(say.copyByHand);
    }
  }
  return (
    <div class="field">
      <label for="text-to-copy">{label}</label>
      <div class="box">
        <textarea id="text-to-copy" ref={box} readOnly rows={rowsFor(text)} value={text} />
      </div>
      <div class="row">
        <button type="button" class="button" onClick={() => void copy()}>
          {say.copy}
        </button>
      </div>
      {said && (
        <p class="small" role="status">
          {said}
        </p>
      )}
    </div>
  );
}

/** Letters in a line of the box on the narrowest phone. */
const LINE_LETTERS = 28;

/** As high as the text, up to what leaves room for the buttons. */
function rowsFor(text: string): number {
  const lines = text.split('\n').map((line) => Math.max(1, Math.ceil(line.length / LINE_LETTERS)));
  return Math.min(9, lines.reduce((sum, count) => sum + count, 0)); // biome-ignore format: one line
}
