import type { Entry } from '../../src/schema/entry.ts';
import { json } from '../storage/bundle/bench-of-packs.ts';
import { scriptedEntries } from './bundle-entries.ts';
import { scriptsInDefinition } from './definition-files.ts';
import { sha256 } from './sound-bench.ts';
import { ENTRIES_PATH, forged, pathIn } from './zip-tricks.ts';

/** A bundle with a script in every text of its record, graded by a definition with a script in every text of its own. */
export function scriptedBundle(): Promise<Uint8Array<ArrayBuffer>> {
  const definition = scriptsInDefinition() as { id: string; version: string };
  const text = json(definition);
  return forged({
    files: (files) => {
      delete files[pathIn(files, 'definitions/')];
      files[`definitions/${sha256(text)}.json`] = text;
      const entries = JSON.parse(new TextDecoder().decode(files[ENTRIES_PATH])) as Entry[];
      const reference = { id: definition.id, version: definition.version, sha256: sha256(text) };
      files[ENTRIES_PATH] = json(
        scriptedEntries(entries).map((entry) => (entry.key[2] === 'checklist' ? { ...entry, v: reference } : entry)),
      );
    },
  });
}
