import type { Checklist, Item, Remedy } from '../checklist.ts';
import type { Problem } from './problem.ts';

/** A remedy never settles a stop item, settles an item once, and leaves it at a grade that item has. */
export function checkRemedies({ items, remedies }: Checklist): Problem[] {
  const byId = new Map(items.map((item) => [item.id, item]));
  return remedies.flatMap(({ settles }, at) => {
    const seen = new Set<string>();
    return settles.flatMap((settled, place) => {
      const here = `remedies[${at}].settles[${place}]`;
      if (seen.has(settled.item)) return [{ place: `${here}.item`, reason: `"${settled.item}" is settled twice` }];
      seen.add(settled.item);
      const item = byId.get(settled.item);
      return item === undefined ? [] : checkSettled(here, item, settled);
    });
  });
}

function checkSettled(place: string, item: Item, { leaves }: Remedy['settles'][number]): Problem[] {
  const problems: Problem[] = [];
  if (item.stop) {
    problems.push({ place: `${place}.item`, reason: `"${item.id}" is a stop item, which no remedy settles` });
  }
  if (item.grades[leaves] === undefined) {
    problems.push({ place: `${place}.leaves`, reason: `"${item.id}" has no grade ${leaves}` });
  }
  return problems;
}
