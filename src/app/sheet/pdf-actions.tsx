import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Sheet } from '../../sheet/model/sheet.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { sheetScreenWords as say } from '../../text/sheet-screen.ts';
import { canShare, saveFile, shareFile } from '../save-file.ts';
import { settings } from '../state/settings.ts';
import { type MadePdf, makePdf } from './make-pdf.ts';

type Step =
  | { now: 'rest' }
  | { now: 'writing'; page: number; pages: number }
  | { now: 'ready'; pdf: MadePdf }
  | { now: 'handedOver'; sentence: string }
  | { now: 'failed' };

interface PdfActionsProps {
  sheet: Sheet;
  /** Of a closed sheet; null of an open one, and of any other paper. */
  revision: number | null;
  /** What stands beside the button until the PDF is being written. */
  children?: ComponentChildren;
}

/** A paper as a PDF: written with progress, then saved or shared. */
export function PdfActions({ sheet, revision, children }: PdfActionsProps) {
  const [step, setStep] = useState<Step>({ now: 'rest' });
  const abort = useRef<AbortController | null>(null);
  useEffect(() => () => abort.current?.abort(), []);

  async function write() {
    const control = new AbortController();
    abort.current = control;
    setStep({ now: 'writing', page: 0, pages: 0 });
    try {
      const pdf = await makePdf({
        sheet,
        paper: settings.value.paper,
        revision,
        signal: control.signal,
        onProgress: (page, pages) => setStep({ now: 'writing', page, pages }),
      });
      setStep({ now: 'ready', pdf });
    } catch (error) {
      if (!control.signal.aborted) console.error('pdf: not written', error);
      setStep({ now: control.signal.aborted ? 'rest' : 'failed' });
    }
  }

  async function share(file: File) {
    if ((await shareFile(file)) === 'shared') setStep({ now: 'handedOver', sentence: say.shared(file.name) });
  }
  function save(file: File) {
    saveFile(file, file.name);
    setStep({ now: 'handedOver', sentence: say.saved(file.name) });
  }

  if (step.now === 'writing') {
    return (
      <>
        <p class="dock-line" role="status">
          {say.making(step.page, step.pages)}
        </p>
        <button type="button" class="button" onClick={() => abort.current?.abort()}>
          {say.stop}
        </button>
      </>
    );
  }
  if (step.now === 'ready') {
    const { file, missingCount } = step.pdf;
    return (
      <>
        <p class="dock-line small" role="status">
          {say.ready(file.name, formatBytes(file.size))} {missingCount > 0 && say.missing(missingCount)}
        </p>
        {canShare(file) && (
          <button type="button" class="button" onClick={() => void share(file)}>
            {say.share}
          </button>
        )}
        <button type="button" class="button primary" onClick={() => save(file)}>
          {say.save}
        </button>
      </>
    );
  }
  return (
    <>
      {step.now === 'handedOver' && (
        <p class="dock-line small" role="status">
          ✓ {step.sentence}
        </p>
      )}
      {step.now === 'failed' && (
        <p class="dock-line notice" role="alert">
          {say.failed}
        </p>
      )}
      {children}
      <button type="button" class="button primary" onClick={() => void write()}>
        {say.pdf(say.papers[settings.value.paper])}
      </button>
    </>
  );
}
