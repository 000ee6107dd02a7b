import type { Checklist } from '../../../schema/checklist.ts';
import type { LiveTests } from '../../../schema/live-tests/live-tests.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import { afterTest, lineWords, withPlace } from '../../../text/recheck-lines.ts';

/** Says a path, or the ids that a line holds, in the words of the record and its checklist. */
export interface LineNames {
  path(path: string): string;
  /** Ids in a line's text put into words; every other text as it is. */
  ids(path: string, text: string): string;
}

type Named = 'items' | 'zones' | 'hazards' | 'remedies';

/** What the ids in a list, or under a field, are ids of. An item may well be called as a zone is. */
const NAMED_IN: Readonly<Record<string, Named>> = {
  items: 'items',
  findings: 'items',
  lines: 'items',
  differences: 'items',
  itemId: 'items',
  itemIds: 'items',
  openSafetyItemIds: 'items',
  zones: 'zones',
  zoneId: 'zones',
  hazards: 'hazards',
  factors: 'hazards',
  hazardGains: 'hazards',
  hazardId: 'hazards',
  clearsHazardIds: 'hazards',
  remedies: 'remedies',
  remedyId: 'remedies',
  unpricedIds: 'remedies',
};

/** Heads that only say which result a line is of. */
const HEADS: readonly string[] = ['grading', 'tests'];

export function lineNames(definitions: readonly Checklist[], tests: LiveTests): LineNames {
  const names: Record<Named, Map<string, string>> = {
    items: new Map(definitions.flatMap(({ items }) => items.map(({ id, title }) => [id, title] as const))),
    zones: new Map(definitions.flatMap(({ zones }) => zones.map(({ id, title }) => [id, title] as const))),
    hazards: new Map(definitions.flatMap(({ hazards }) => hazards.map(({ id, title }) => [id, title] as const))),
    remedies: new Map(
      definitions.flatMap(({ remedies }) => remedies.map(({ id, text }) => [id, `“${text}”`] as const)),
    ),
  };
  const testNames = namesOfTests(tests);
  const nameIn = (field: string | undefined, id: string): string | null => {
    const named = field !== undefined && Object.hasOwn(NAMED_IN, field) ? NAMED_IN[field] : undefined;
    const name = named === undefined ? undefined : names[named].get(id);
    return name ?? testNames.get(id) ?? (/^\d+$/.test(id) ? id : null);
  };
  return {
    path: (path) => {
      const parts = path.split('/');
      const from = parts.length > 1 && HEADS.includes(parts[0] ?? '') ? 1 : 0;
      return parts.slice(from).reduce((said, part, place) => {
        const test = testNames.get(part);
        if (test !== undefined) return afterTest(said, test);
        // A test says in its name what list it is of.
        if (testNames.has(parts[from + place + 1] ?? '')) return said;
        return withPlace(said, part, nameIn(parts[from + place - 1], part));
      }, '');
    },
    ids: (path, text) => {
      const field = path.split('/').at(-1);
      return text
        .split(', ')
        .map((id) => nameIn(field, id) ?? id)
        .join(', ');
    },
  };
}

/** "Run 2 · hard", by id. */
function namesOfTests(tests: LiveTests): Map<string, string> {
  const kinds: [string, readonly object[]][] = Object.entries(tests);
  return new Map(
    kinds.flatMap(([kind, all]) =>
      all.flatMap((test, place): [string, string][] => {
        const one = Object.hasOwn(lineWords.tests, kind) ? lineWords.tests[kind] : undefined;
        if (one === undefined || !('id' in test) || typeof test.id !== 'string') return [];
        const number = testWords.numbered(one, place + 1);
        const label = 'label' in test && typeof test.label === 'string' ? test.label.trim() : '';
        return [[test.id, label === '' ? number : testWords.titled([number, label])]];
      }),
    ),
  );
}
