import { readdirSync, readFileSync } from 'node:fs';

export interface DefinitionFile {
  /** "id/version", as the path has it. */
  name: string;
  text: string;
}

/** Every `checklists/<id>/<version>.json`, as it lies there. */
export function definitionFiles(): DefinitionFile[] {
  return readdirSync('checklists', { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: id }) =>
      readdirSync(`checklists/${id}`).map((file) => ({
        name: `${id}/${file.replace(/\.json$/, '')}`,
        text: readFileSync(`checklists/${id}/${file}`, 'utf8'),
      })),
    );
}
