import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Which folder of src/ may import which (DEVELOPERS.md, "Layers"). A folder that is not listed here is refused. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  units: [],
  calc: ['units'],
  schema: ['units'],
  record: ['schema'],
  logs: ['calc', 'units', 'schema'],
  grading: ['schema', 'record', 'calc', 'units'],
  migrations: ['schema'],
  storage: ['schema', 'record', 'migrations', 'units'],
  drawing: ['calc', 'units', 'schema'],
  photos: ['schema'],
  sheet: ['grading', 'record', 'calc', 'units', 'drawing', 'schema', 'text'],
  text: ['units', 'schema'],
  ui: ['schema', 'units', 'drawing', 'text', 'grading (types)', 'sheet (types)'],
  app: ['*'],
};
const ENTRY_POINTS = ['main.tsx', 'sw.ts'];
/** Folders that run in plain Node: no page, clock, storage or randomness. */
const PURE = ['units', 'calc', 'schema', 'record', 'logs', 'grading', 'migrations', 'text', 'drawing', 'sheet/model'];
const IMPURE_WORDS =
  /\b(document|window|navigator|indexedDB|localStorage|Date\.now|new Date\(\)|Math\.random|crypto\.|performance\.now|setTimeout|fetch\()/;

const files = sourceFiles('src');

describe('layers of src/', () => {
  it('has only listed folders and entry points', () => {
    const strangers = readdirSync('src').filter((name) => !(name in MAY_IMPORT) && !ENTRY_POINTS.includes(name));
    expect(strangers).toEqual([]);
  });

  it('reads at least 60 source files, so that the checks below check something', () => {
    expect(files.length).toBeGreaterThan(60);
  });

  it('imports only what its folder may', () => {
    expect(files.flatMap(forbiddenImports)).toEqual([]);
  });

  it('keeps page, clock, storage and randomness out of the pure folders', () => {
    const pure = files.filter((file) => PURE.some((folder) => file.startsWith(`src/${folder}/`)));
    const hits = pure.flatMap((file) =>
      withoutComments(readFileSync(file, 'utf8'))
        .split('\n')
        .filter((line) => IMPURE_WORDS.test(line) && !/['"`].*\b(document|window)\b.*['"`]/.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(hits).toEqual([]);
  });

  it('touches IndexedDB only in storage/', () => {
    const hits = files.filter(
      (file) =>
        !file.startsWith('src/storage/') &&
        /\bindexedDB\b|idb-keyval/.test(withoutComments(readFileSync(file, 'utf8'))),
    );
    expect(hits).toEqual([]);
  });

  it.each(Object.keys(MAY_IMPORT).filter((folder) => existing(`src/${folder}`)))(
    'src/%s has a README of at most 30 lines',
    (folder) => {
      const text = readFileSync(`src/${folder}/README.md`, 'utf8');
      expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(30);
    },
  );

  it('refuses a made-up import of app/ by grading/', () => {
    expect(judge('src/grading/made-up.ts', "import { x } from '../app/state.ts';")).toHaveLength(1);
    expect(judge('src/ui/made-up.tsx', "import { gradeRecord } from '../grading/grade-record.ts';")).toHaveLength(1);
    expect(judge('src/ui/made-up.tsx', "import type { Grading } from '../grading/grading.ts';")).toEqual([]);
  });
});

function forbiddenImports(file: string): string[] {
  return judge(file, readFileSync(file, 'utf8'));
}

function judge(file: string, text: string): string[] {
  const folder = relative('src', file).split('/')[0] ?? '';
  if (ENTRY_POINTS.includes(folder)) return [];
  const allowed = MAY_IMPORT[folder] ?? [];
  if (allowed.includes('*')) return [];
  const imports = text.matchAll(
    /(import|export)(\s+type)?\s+[^;'"]*?from\s*['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]|import\s*['"](\.[^'"]+)['"]/g,
  );
  const wrong: string[] = [];
  for (const found of imports) {
    const typeOnly = found[2] !== undefined;
    const target = normalize(join(dirname(file), found[3] ?? found[4] ?? found[5] ?? ''));
    const other = relative('src', target).split('/')[0] ?? '';
    const fine = other === folder || allowed.includes(other) || (typeOnly && allowed.includes(`${other} (types)`));
    if (!fine) wrong.push(`${file} imports ${target}`);
  }
  return wrong;
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
}

function existing(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return /\.tsx?$/.test(entry.name) ? [path] : [];
  });
}
