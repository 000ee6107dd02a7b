import { useState } from 'preact/hooks';
import { formatBytes } from '../../text/format-bytes.ts';
import { handOverWords as say } from '../../text/hand-over.ts';
import { canShare, saveFile, shareFile } from '../save-file.ts';

type Step = { now: 'rest' } | { now: 'making' } | { now: 'ready'; file: File } | { now: 'failed'; sentence: string };

interface HandOverProps {
  /** On the button: "Findings as CSV". */
  label: string;
  /** Makes the file when it is asked for. What it throws is logged, and `failed` said. */
  make: () => Promise<File>;
  failed?: string;
  primary?: boolean;
}

/** One file to take away: made on a tap, then shared to another app where the phone can, saved where it cannot. */
export function HandOver({ label, make, failed = say.failed, primary = false }: HandOverProps) {
  const [step, setStep] = useState<Step>({ now: 'rest' });
  const [handed, setHanded] = useState<string | null>(null);

  async function begin() {
    setStep({ now: 'making' });
    setHanded(null);
    try {
      const file = await make();
      if (canShare(file)) return setStep({ now: 'ready', file });
      save(file);
    } catch (error) {
      console.error('file: not made', label, error);
      setStep({ now: 'failed', sentence: failed });
    }
  }
  function save(file: File) {
    saveFile(file, file.name);
    setHanded(say.saved(file.name));
    setStep({ now: 'rest' });
  }
  async function share(file: File) {
    const outcome = await shareFile(file);
    if (outcome === 'cancelled') return;
    if (outcome === 'failed') return setHanded(say.notShared);
    setHanded(say.shared(file.name));
    setStep({ now: 'rest' });
  }

  return (
    <div class="stack hand-over">
      {step.now === 'ready' ? (
        <>
          <p class="small muted" role="status">
            {say.ready(step.file.name, formatBytes(step.file.size))}
          </p>
          <div class="row">
            <button type="button" class="button" onClick={() => save(step.file)}>
              {say.save}
            </button>
            <button type="button" class="button primary" onClick={() => void share(step.file)}>
              {say.share}
            </button>
          </div>
        </>
      ) : (
        <button
          type="button"
          class={primary ? 'button primary' : 'button'}
          disabled={step.now === 'making'}
          onClick={() => void begin()}
        >
          {step.now === 'making' ? say.making : label}
        </button>
      )}
      {handed && (
        <p class="small muted" role="status">
          {handed}
        </p>
      )}
      {step.now === 'failed' && (
        <p class="notice" role="alert">
          {step.sentence}
        </p>
      )}
    </div>
  );
}
