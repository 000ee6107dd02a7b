import type { Checklist } from '../checklist.ts';
import type { Problem } from './problem.ts';

interface Named {
  id: string;
}

/** Kebab-case words that are members of every object or function: a careless look-up would find those instead. */
const RESERVED: readonly string[] = ['constructor', 'prototype'];

/** Ids are used once in their list, and none is the name of something every object has. */
export function checkIds(definition: Checklist): Problem[] {
  const { zones, hazards, facts, items, remedies } = definition;
  return [
    ...(RESERVED.includes(definition.id) ? [reserved('id', definition.id)] : []),
    ...Object.entries({ zones, hazards, facts, items, remedies }).flatMap(([place, list]) => checkList(place, list)),
    ...facts.flatMap(({ choices }, at) => checkList(`facts[${at}].choices`, choices)),
  ];
}

function checkList(place: string, list: readonly Named[]): Problem[] {
  const seen = new Set<string>();
  return list.flatMap(({ id }, at) => {
    const here = `${place}[${at}].id`;
    if (RESERVED.includes(id)) return [reserved(here, id)];
    if (seen.has(id)) return [{ place: here, reason: `"${id}" is used twice` }];
    seen.add(id);
    return [];
  });
}

function reserved(place: string, id: string): Problem {
  return { place, reason: `"${id}" is the name of something every object has: take another word` };
}
