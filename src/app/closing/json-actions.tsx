import { useState } from 'preact/hooks';
import { closingWords as say } from '../../text/closing-screens.ts';
import { fileName } from '../file-name.ts';
import { canShare, saveFile, shareFile } from '../save-file.ts';
import type { SealedSheetHere } from './sealed-content.ts';

/** The JSON of a closed sheet as a file: the very bytes whose SHA-256 is printed. */
export function JsonActions({ sealed, title }: { sealed: SealedSheetHere; title: string }) {
  const [said, setSaid] = useState<string | null>(null);
  const name = fileName({ title, revision: sealed.content.sealed.revision, what: null, ending: 'json' });
  const file = new File([sealed.bytes], name, { type: 'application/json' });

  function save() {
    saveFile(file, name);
    setSaid(say.jsonSaved(name));
  }
  async function share() {
    if ((await shareFile(file)) === 'shared') setSaid(say.jsonShared(name));
  }
  return (
    <>
      <div class="row">
        <button type="button" class="button" onClick={save}>
          {say.saveJson}
        </button>
        {canShare(file) && (
          <button type="button" class="button" onClick={() => void share()}>
            {say.shareJson}
          </button>
        )}
      </div>
      {said && (
        <p class="small" role="status">
          ✓ <span class="hash">{said}</span>
        </p>
      )}
    </>
  );
}
