import type { Checklist, Fact, Item } from '../checklist.ts';
import type { Problem } from './problem.ts';

/** Every zone, hazard, fact, choice and item that is referred to exists. */
export function checkNames(definition: Checklist): Problem[] {
  const zones = idsOf(definition.zones);
  const hazards = idsOf(definition.hazards);
  const items = idsOf(definition.items);
  const facts = new Map(definition.facts.map((fact) => [fact.id, fact]));
  return [
    ...definition.facts.flatMap(({ zone }, at) => unknown(`facts[${at}].zone`, zone, zones)),
    ...definition.items.flatMap((item, at) => [
      ...unknown(`items[${at}].zone`, item.zone, zones),
      ...unknown(`items[${at}].hazard`, item.hazard, hazards),
      ...unknownCondition(`items[${at}].onlyIf`, item.onlyIf, facts),
      ...unknownCondition(`items[${at}].derive.fuseFitted`, item.derive?.fuseFitted, facts),
    ]),
    ...definition.remedies.flatMap(({ settles }, at) =>
      settles.flatMap(({ item }, place) => unknown(`remedies[${at}].settles[${place}].item`, item, items)),
    ),
  ];
}

function unknownCondition(place: string, condition: Item['onlyIf'], facts: ReadonlyMap<string, Fact>): Problem[] {
  if (condition === undefined) return [];
  const fact = facts.get(condition.fact);
  if (fact === undefined) return unknown(`${place}.fact`, condition.fact, new Set());
  return unknown(`${place}.is`, condition.is, idsOf(fact.choices));
}

function unknown(place: string, name: string | undefined, known: ReadonlySet<string>): Problem[] {
  if (name === undefined || known.has(name)) return [];
  return [{ place, reason: `"${name}" is not named in this definition` }];
}

function idsOf(list: readonly { id: string }[]): ReadonlySet<string> {
  return new Set(list.map(({ id }) => id));
}
