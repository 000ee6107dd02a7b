import { isNewerVersion } from './is-newer-version.ts';

/** A checklist file that comes with the app; what it says is read when it is needed. */
export interface BuiltInFile {
  id: string;
  version: string;
  url: string;
}

/** The checklist a new pack begins with, unless another is chosen: what most people who open Underlid have before them. */
export const USUAL_ID = 'lfp-drop-in';

const URLS = import.meta.glob<string>('../../../checklists/*/*.json', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** The usual one first, then by id; of each, the newest first. */
export const BUILT_IN_FILES: readonly BuiltInFile[] = Object.entries(URLS)
  .flatMap(([path, url]): BuiltInFile[] => {
    const [, id, version] = /\/([^/]+)\/([^/]+)\.json$/.exec(path) ?? [];
    return id === undefined || version === undefined ? [] : [{ id, version, url }];
  })
  .toSorted((a, b) => {
    if (a.id === b.id) return isNewerVersion(a.version, b.version) ? -1 : 1;
    if (a.id === USUAL_ID || b.id === USUAL_ID) return a.id === USUAL_ID ? -1 : 1;
    return a.id < b.id ? -1 : 1;
  });

/** Null where the app brings none of that id. */
export function newestBuiltIn(id: string): BuiltInFile | null {
  return BUILT_IN_FILES.find((file) => file.id === id) ?? null;
}

export async function builtInText({ url, id, version }: BuiltInFile): Promise<string> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`the built-in checklist ${id} ${version} did not load (${response.status})`);
  return response.text();
}
