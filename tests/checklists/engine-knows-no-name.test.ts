import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { admittedFile } from './admitted-file.ts';
import { definitionFiles } from './definition-files.ts';

/**
 * The engine knows kinds of question, never a particular item, zone, hazard or fact (DESIGN §4, STYLE "Checklists are
 * data"). Outside the demo bench, which is a record and so speaks of items, no source may hold one of their ids as a
 * string. Words that are an id by chance and something else here are listed with what they are.
 */
const BY_CHANCE: Readonly<Record<string, string>> = {
  // The section that is drawn has parts of its own; a zone called like one has its place there, any other in the plan.
  'src/drawing/cutaway.ts': 'bms cells enclosure sensors vents wiring',
  'src/drawing/cutaway/labels.ts': 'bms cells enclosure sensors vents wiring',
  // What became of the cells afterwards: a field of the record.
  'src/app/screens/afterwards-screen.tsx': 'cells',
  // A unit, and the members of a round of cell readings.
  'src/schema/checklist.ts': 'cells',
  'src/app/parts/measured-part.tsx': 'cells',
  'src/sheet/model/measured-words.ts': 'cells',
  'src/record/fold-live-tests.ts': 'cells',
  'src/grading/derive/graded-cell-sets.ts': 'cells',
  'src/grading/live-tests/cells-result.ts': 'cells',
  'src/sheet/model/live-tests/cell-plot-blocks.ts': 'cells',
  'src/sheet/model/live-tests/cell-working.ts': 'cells',
  'src/text/recheck-lines.ts': 'cells',
  // Of a table.
  'src/ui/sheet/grid-block.tsx': 'cells',
  'src/sheet/model/side-by-side/grid-rows.ts': 'cells',
  'src/text/sheet-record.ts': 'cells',
  // Kinds of live test, which have addresses of their own, and the gate that some stand behind.
  'src/app/live-tests/kinds/cells.ts': 'cells',
  'src/app/live-tests/kinds/read-out.ts': 'read-out',
  'src/app/live-tests/tests-href.ts': 'cells read-out',
  'src/app/live-tests/live-test-part.ts': 'sensors',
  'src/app/live-tests/live-test-parts.ts': 'sensors',
  // What opened a run or acted in a cut-off, where the voltage was read, what is still to be tried: values of the record.
  'src/schema/live-tests/run.ts': 'bms cells',
  'src/schema/live-tests/cut-off.ts': 'bms',
  'src/app/live-tests/kinds/run.ts': 'bms',
  'src/app/live-tests/kinds/cut-off.ts': 'bms',
  'src/app/live-tests/kinds/sensor.ts': 'bms',
  'src/grading/live-tests/results.ts': 'cells',
  'src/grading/live-tests/cut-off-results.ts': 'cells',
};
/** The demo bench: invented records, and the words written in them. */
const DEMO = /^src\/(app\/demo\/|text\/demo(-tests)?\.ts$)/;

const IDS = new Set(
  definitionFiles()
    .map(({ name }) => admittedFile(name))
    .flatMap(({ zones, hazards, facts, items }) => [...zones, ...hazards, ...facts, ...items].map(({ id }) => id)),
);
const files = sourceFiles().filter((file) => !DEMO.test(file));
const found = new Map(files.map((file) => [file, idsIn(readFileSync(file, 'utf8'))] as const));

describe('names of the checklists in src/', () => {
  it('are looked for in at least 500 files, and there are at least 120 of them', () => {
    expect(files.length).toBeGreaterThan(500);
    expect(IDS.size).toBeGreaterThan(120);
  });

  it('are none but the listed words that mean something else there', () => {
    const named = [...found].flatMap(([file, ids]) =>
      ids.filter((id) => !listed(file).includes(id)).map((id) => `${file}: ${id}`),
    );
    expect(named).toEqual([]);
  });

  it('are listed only where they are: 0 entries too many', () => {
    const idle = Object.keys(BY_CHANCE).flatMap((file) =>
      listed(file)
        .filter((id) => !found.get(file)?.includes(id))
        .map((id) => `${file}: ${id}`),
    );
    expect(idle).toEqual([]);
  });

  it('are 0 kebab-case ones in the list: such a word is never there by chance, but for a kind of live test', () => {
    const words = Object.keys(BY_CHANCE).flatMap(listed);
    expect([...new Set(words.filter((word) => word.includes('-')))]).toEqual(['read-out']);
  });

  it('would be found: in quotes of all three kinds and as a key, but not in a comment or a longer word', () => {
    const made = `f('cell-vents'); g("hot-joint"); h(\`metal-case\`); const x = { 'main-lugs': 1 };
      // 'leak'
      /** 'swelling' */ import './cells-result.ts'; i('cell-vents-2');`;
    expect(idsIn(made)).toEqual(['cell-vents', 'hot-joint', 'main-lugs', 'metal-case']);
  });
});

function listed(file: string): string[] {
  return BY_CHANCE[file]?.split(' ') ?? [];
}

function idsIn(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '');
  const strings = [...code.matchAll(/(['"`])([a-z][a-z0-9-]*)\1/g)].map((match) => match[2] ?? '');
  return [...new Set(strings)].filter((text) => IDS.has(text)).toSorted();
}

function sourceFiles(): string[] {
  return readdirSync('src', { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map(({ parentPath, name }) => `${parentPath}/${name}`);
}
