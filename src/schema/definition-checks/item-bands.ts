import type { Band, Checklist, Item } from '../checklist.ts';
import { DERIVATIONS, MEASURES } from '../figures.ts';
import { gradeRank } from '../grade.ts';
import type { Problem } from './problem.ts';

/** A measured or derived item says how, for every case its figure can come in, down to its own grades. */
export function checkItemBands({ items }: Checklist): Problem[] {
  return items.flatMap((item, at) => {
    const place = `items[${at}]`;
    return [
      ...partOf(place, item, 'measure'),
      ...partOf(place, item, 'derive'),
      ...measureProblems(place, item),
      ...deriveProblems(place, item),
    ];
  });
}

function partOf(place: string, item: Item, part: 'measure' | 'derive'): Problem[] {
  if ((item.kind === part) === (item[part] !== undefined)) return [];
  const reason =
    item.kind === part ? `is missing: the item is of kind ${part}` : `is given, but the item is of kind ${item.kind}`;
  return [{ place: `${place}.${part}`, reason }];
}

function measureProblems(place: string, item: Item): Problem[] {
  const { measure } = item;
  if (measure === undefined) return [];
  const wanted = MEASURES[measure.figure];
  const seen = new Set<string>();
  return [
    ...(measure.inputs.length === wanted.inputs
      ? []
      : [
          {
            place: `${place}.measure.inputs`,
            reason: `are ${measure.inputs.length}; ${measure.figure} takes ${wanted.inputs}`,
          },
        ]),
    ...measure.inputs.flatMap(({ id, least, most }, at) => {
      const where = `${place}.measure.inputs[${at}]`;
      const twice = seen.has(id);
      seen.add(id);
      return [
        ...(twice ? [{ place: `${where}.id`, reason: `"${id}" is used twice` }] : []),
        ...(least < most ? [] : [{ place: `${where}.most`, reason: `must be above least, ${least}, got ${most}` }]),
      ];
    }),
    ...bandProblems(`${place}.measure.bands`, item, { bands: measure.bands, cases: wanted.cases }),
  ];
}

function deriveProblems(place: string, item: Item): Problem[] {
  const { derive } = item;
  if (derive === undefined) return [];
  const misplaced = derive.fuseFitted !== undefined && derive.from !== 'overCurrent';
  return [
    ...(misplaced ? [{ place: `${place}.derive.fuseFitted`, reason: `says nothing about ${derive.from}` }] : []),
    ...bandProblems(`${place}.derive.bands`, item, { bands: derive.bands, cases: DERIVATIONS[derive.from].cases }),
  ];
}

interface Cased {
  bands: Readonly<Record<string, readonly Band[]>>;
  cases: readonly string[];
}

function bandProblems(place: string, item: Item, { bands, cases }: Cased): Problem[] {
  const missing = cases.filter((name) => !Object.hasOwn(bands, name));
  const extra = Object.keys(bands).filter((name) => !cases.includes(name));
  return [
    ...missing.map((name) => ({ place, reason: `has no bands for the case "${name}"` })),
    ...extra.map((name) => ({ place: `${place}.${name}`, reason: 'is no case of this figure' })),
    ...Object.entries(bands).flatMap(([name, list]) => listProblems(`${place}.${name}`, item, list)),
  ];
}

function listProblems(place: string, item: Item, list: readonly Band[]): Problem[] {
  return list.flatMap((band, at) => {
    const where = `${place}[${at}]`;
    const before = list[at - 1];
    const isLast = at === list.length - 1;
    return [
      ...(item.grades[band.grade] === undefined
        ? [{ place: `${where}.grade`, reason: `is ${band.grade}, which the item does not offer` }]
        : []),
      ...(before !== undefined && gradeRank(band.grade) <= gradeRank(before.grade)
        ? [{ place: `${where}.grade`, reason: `must be worse than ${before.grade} before it, got ${band.grade}` }]
        : []),
      ...(hasLimit(band) === isLast
        ? [
            {
              place: where,
              reason: isLast
                ? 'is the last and must take the rest, without limits'
                : 'has no limit, so none after it can hold',
            },
          ]
        : []),
      ...(isEmpty(band) ? [{ place: where, reason: 'has limits that no figure can be inside' }] : []),
    ];
  });
}

function hasLimit({ from, over, upTo, under }: Band): boolean {
  return [from, over, upTo, under].some((limit) => limit !== undefined);
}

function isEmpty({ from, over, upTo, under }: Band): boolean {
  const low = Math.max(from ?? -Infinity, over ?? -Infinity);
  const high = Math.min(upTo ?? Infinity, under ?? Infinity);
  if (low > high) return true;
  return low === high && (over === low || under === high);
}
