import { useState } from 'preact/hooks';
import { type PrintedHash, readPrintedHash } from '../../sheet/model/sealed/printed-hash.ts';
import { recheckWords as say } from '../../text/recheck.ts';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Fold } from '../parts/fold.tsx';
import { FileButton } from './file-button.tsx';
import type { FileRecheck } from './recheck-file.ts';
import { RecheckReport } from './recheck-report.tsx';

type Now = { now: 'rest' } | { now: 'working'; name: string } | { now: 'done'; name: string; result: FileRecheck };

/** Recheck: the JSON of a closed sheet, from whatever phone, worked out again. What does it is fetched when first used. */
export function RecheckPart() {
  const [typed, setTyped] = useState('');
  const [now, setNow] = useState<Now>({ now: 'rest' });
  const printed = readPrintedHash(typed);

  async function check(file: File) {
    setNow({ now: 'working', name: file.name });
    setNow({ now: 'done', name: file.name, result: await resultOf(file) });
  }

  return (
    <Fold title={say.title} hint={say.hint} part="recheck">
      <p class="muted small">{say.lead}</p>
      <TextField id="printed-sha256" label={say.printed} value={typed} onChange={setTyped} />
      <p class="small muted slot">{wrongWords(printed) ?? say.printedHint}</p>
      <FileButton
        label={say.choose}
        accept=".json,application/json"
        isBusy={now.now === 'working'}
        onFile={(file) => void check(file)}
      />
      {now.now === 'working' && <p role="status">{say.working(now.name)}</p>}
      {now.now === 'done' && (
        <>
          <p class="small muted hash">{now.name}</p>
          {now.result.ok ? (
            <RecheckReport file={now.result} printed={printed} />
          ) : (
            <div class="notice stack" role="status" data-recheck>
              <p>{now.result.sentence}</p>
              {now.result.where !== null && <p class="small hash">{now.result.where}</p>}
              <p class="muted">{say.nothingStored}</p>
            </div>
          )}
        </>
      )}
    </Fold>
  );
}

async function resultOf(file: File): Promise<FileRecheck> {
  const { recheckFile } = await import('./recheck-file.ts');
  try {
    return await recheckFile(file);
  } catch (error) {
    console.warn('recheck: failed', error);
    const sentence = error instanceof DOMException ? say.refused.unreadable : say.refused.failed;
    return { ok: false, sentence, where: null };
  }
}

function wrongWords(printed: PrintedHash): string | null {
  switch (printed.is) {
    case 'tooShort':
    case 'tooLong':
      return say.printedWrong[printed.is](printed.digits);
    case 'notHex':
      return say.printedWrong.notHex(printed.found);
    case 'none':
    case 'digits':
      return null;
  }
}
