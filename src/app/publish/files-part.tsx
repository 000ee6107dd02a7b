import { useState } from 'preact/hooks';
import { FINDINGS_SCHEMA_NAME } from '../../schema/findings-file.ts';
import { findingsCsv } from '../../sheet/exports/findings-csv.ts';
import { findingsJsonText } from '../../sheet/exports/findings-json.ts';
import type { SheetInput } from '../../sheet/model/sheet-context.ts';
import { publishWords as say } from '../../text/publish.ts';
import { fileName } from '../file-name.ts';
import { HandOver } from '../parts/hand-over.tsx';
import { photosFile } from './photos-file.ts';

interface FilesPartProps {
  input: SheetInput;
  revision: number | null;
  /** Name and sample of the pack, for the files' names. */
  title: string;
}

/** The files that other programs read, each made on a tap. */
export function FilesPart({ input, revision, title }: FilesPartProps) {
  const [missing, setMissing] = useState(0);
  const name = (what: string, ending: string) => fileName({ title, revision, what, ending });

  const csv = async () => new File([findingsCsv(input)], name(say.files.findings, 'csv'), { type: 'text/csv' });
  const json = async () =>
    new File([findingsJsonText(input)], name(say.files.findings, 'json'), { type: 'application/json' });
  async function photos() {
    const made = await photosFile(input, name(say.files.photos, 'zip'));
    setMissing(made.missingCount);
    return made.file;
  }
  return (
    <section class="stack">
      <h2>{say.toWorkOn}</h2>
      <p class="small muted">{say.csv.hint}</p>
      <HandOver label={say.csv.label} make={csv} />
      <p class="small muted">
        {say.json.hint} {say.json.schema} <a href={`./${FINDINGS_SCHEMA_NAME}`}>{FINDINGS_SCHEMA_NAME}</a>.
      </p>
      <HandOver label={say.json.label} make={json} />
      <p class="small muted">{say.photos.hint}</p>
      {input.record.photos.length === 0 ? (
        <p>{say.photos.none}</p>
      ) : (
        <HandOver label={say.photos.label} make={photos} failed={say.photos.failed} />
      )}
      {missing > 0 && (
        <p class="notice" role="status">
          {say.photos.missing(missing)}
        </p>
      )}
    </section>
  );
}
