import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtIn } from './built-in.ts';
import { type IdsReferredTo, idsReferredTo } from './ids-referred-to.ts';

const itemIds = new Set(builtIn.items.map(({ id }) => id));
const factIds = new Set(builtIn.facts.map(({ id }) => id));
const demoFiles = filesUnder('src/app/demo');

describe('names inside the first checklist', () => {
  it('leave 0 zones, hazards, facts, choices and items unknown', () => {
    const zoneIds = new Set(builtIn.zones.map(({ id }) => id));
    const hazardIds = new Set(builtIn.hazards.map(({ id }) => id));
    const choiceIds = new Set(
      builtIn.facts.flatMap(({ id, choices }) => choices.map((choice) => `${id}/${choice.id}`)),
    );
    const unknown = [
      ...builtIn.items.map(({ zone }) => zone).filter((id) => !zoneIds.has(id)),
      ...builtIn.facts.flatMap(({ zone }) => zone ?? []).filter((id) => !zoneIds.has(id)),
      ...builtIn.items.flatMap(({ hazard }) => hazard ?? []).filter((id) => !hazardIds.has(id)),
      ...builtIn.items.flatMap(({ onlyIf }) => (onlyIf ? `${onlyIf.fact}/${onlyIf.is}` : [])).filter(notIn(choiceIds)),
      ...builtIn.remedies.flatMap(({ settles }) => settles.map(({ item }) => item)).filter(notIn(itemIds)),
    ];
    expect(unknown).toEqual([]);
  });

  it('leave 0 facts hanging on another: a fact has no condition', () => {
    expect(builtIn.facts.filter((fact) => 'onlyIf' in fact)).toEqual([]);
  });
});

describe('ids that the app names', () => {
  // Elsewhere in src/ there are none at all: engine-knows-no-name.test.ts.
  it.each(['src/text/demo.ts', 'src/text/demo-tests.ts'])('are 0 unknown ones in %s', (file) => {
    expect(unknownIn([file])).toEqual([]);
  });

  it('are the 6 zones for which the cutaway has a part', () => {
    const drawn = [...readFileSync('src/drawing/cutaway.ts', 'utf8').matchAll(/stateOf\('([a-z-]+)'\)/g)];
    expect(new Set(drawn.map((match) => match[1]))).toEqual(new Set(builtIn.zones.map(({ id }) => id)));
  });

  it('are 0 unknown ones in fixtures of the tests', () => {
    const fixtures = filesUnder('tests').filter((file) => file.includes('/fixtures/') && /\.(ts|json)$/.test(file));
    expect(unknownIn(fixtures)).toEqual([]);
  });

  it('are at least 30 items in the demo bench, 0 of them unknown', () => {
    const named = demoFiles.map((file) => idsReferredTo(readFileSync(file, 'utf8')));
    expect(new Set(named.flatMap(({ items }) => items)).size).toBeGreaterThanOrEqual(30);
    expect(unknownIn(demoFiles)).toEqual([]);
  });
});

function unknownIn(files: readonly string[]): string[] {
  return files.flatMap((file) => unknownOf(idsReferredTo(readFileSync(file, 'utf8'))).map((id) => `${file}: ${id}`));
}

function unknownOf({ items, facts }: IdsReferredTo): string[] {
  return [...items.filter(notIn(itemIds)), ...facts.filter(notIn(factIds))];
}

function notIn(known: ReadonlySet<string>): (id: string) => boolean {
  return (id) => !known.has(id);
}

function filesUnder(folder: string): string[] {
  const entries = readdirSync(folder, { withFileTypes: true, recursive: true });
  return entries
    .filter((entry) => entry.isFile() && /\.(tsx?|json)$/.test(entry.name))
    .map(({ parentPath, name }) => `${parentPath}/${name}`);
}
