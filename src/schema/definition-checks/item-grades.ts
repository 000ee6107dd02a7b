import type { Checklist, Item } from '../checklist.ts';
import { GRADES } from '../grade.ts';
import type { Problem } from './problem.ts';

/** What was not seen is no grade: it has an answer of its own, with a reason. */
const NOT_A_SIGHT = /\b(unknown|unsure|unclear|not stated|not known)\b/i;

/** An item offers at least two grades, in different words, each something one can see; a stop item can fail. */
export function checkItemGrades({ items }: Checklist): Problem[] {
  return items.flatMap((item, at) => {
    const place = `items[${at}].grades`;
    const count = gradesOf(item).length;
    return [
      ...(count < 2 ? [{ place, reason: `has ${count} of the at least two grades an item offers` }] : []),
      ...(item.stop && item.grades.failed === undefined
        ? [{ place, reason: 'a stop item must have the grade failed, the only one it acts on' }]
        : []),
      ...sameWords(place, item),
      ...notSights(place, item),
    ];
  });
}

function sameWords(place: string, item: Item): Problem[] {
  const before = new Map<string, string>();
  return gradesOf(item).flatMap(({ grade, text }) => {
    const words = bareWords(text);
    const other = before.get(words);
    if (other !== undefined) return [{ place: `${place}.${grade}`, reason: `has the same words as ${other}` }];
    before.set(words, grade);
    return [];
  });
}

function notSights(place: string, item: Item): Problem[] {
  return gradesOf(item).flatMap(({ grade, text }) => {
    const word = NOT_A_SIGHT.exec(text)?.[0];
    if (word === undefined) return [];
    return [{ place: `${place}.${grade}`, reason: `says "${word}": that is not seen, which is not a grade` }];
  });
}

function gradesOf({ grades }: Item): { grade: string; text: string }[] {
  return GRADES.flatMap((grade) => {
    const text = grades[grade];
    return text === undefined ? [] : [{ grade, text }];
  });
}

/** Case and punctuation left out. Signs such as ≤ and > stay, and 1.5 does not become 15. */
function bareWords(text: string): string {
  return text.toLowerCase().replace(/\p{P}/gu, ' ').replace(/\s+/g, ' ').trim();
}
