import type { Basis, Item } from '../../schema/checklist.ts';
import { CALCULATION_SOURCES } from '../../text/live-tests/results/sources.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

type Source = Extract<Basis, { kind: 'source' }>;

/** Every source the asked items rest on, by how sure it is, how many items rest on none, and what the tests rest on. */
export function sourcesBlocks(context: SheetContext, tests: readonly Block[]): Block[] {
  const words = sheetWords.sources;
  const asked = context.grading.items
    .filter(({ because }) => because !== 'notAsked')
    .map(({ itemId }) => context.itemOf(itemId));
  const sources = asked.flatMap((item) => item.basis.filter((basis): basis is Source => basis.kind === 'source'));
  const counted = (kind: Basis['kind']) => asked.filter((item) => restsOnlyOn(item, kind)).length;
  return [
    ...group(words.opened, sources, 'primary'),
    ...group(words.quoted, sources, 'secondary'),
    ...group(words.memory, sources, 'memory'),
    ...[
      ...(counted('commonPractice') === 0 ? [] : [words.commonPractice(counted('commonPractice'))]),
      ...(counted('ourChoice') === 0 ? [] : [words.ourChoice(counted('ourChoice'))]),
    ].map((text): Block => ({ kind: 'paragraph', text, tone: 'plain' })),
    ...listed(words.calculations, calculationSources(tests)),
  ];
}

function restsOnlyOn(item: Item, kind: Basis['kind']): boolean {
  return item.basis.every((basis) => basis.kind === kind);
}

function group(heading: string, sources: readonly Source[], sure: Source['sure']): Block[] {
  return listed(
    heading,
    [...new Set(sources.filter((source) => source.sure === sure).map(({ source }) => source))].sort(),
  );
}

/** In the order of their list; each says itself how sure it is. */
function calculationSources(tests: readonly Block[]): string[] {
  const used = new Set(tests.flatMap((block) => (block.kind === 'result' ? (block.working?.sources ?? []) : [])));
  return Object.values(CALCULATION_SOURCES).filter(
    (source) => used.has(source) && source !== CALCULATION_SOURCES.definition,
  );
}

function listed(heading: string, names: readonly string[]): Block[] {
  if (names.length === 0) return [];
  return [
    { kind: 'subhead', text: heading },
    { kind: 'list', items: names.map((text) => ({ text })) },
  ];
}
