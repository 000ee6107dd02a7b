import type { Checklist, Item, Remedy } from '../../src/schema/checklist.ts';

/** What a minor version may not change of an item it takes over (DESIGN §4): everything its meaning and weight rest on. */
const KEPT = [
  'zone',
  'state',
  'route',
  'weight',
  'safety',
  'stop',
  'ask',
  'grades',
  'hazard',
  'severity',
  'likelihood',
  'onlyIf',
  'mayNotApply',
] as const satisfies readonly (keyof Item)[];

/** Why `after` is no minor version of `before`: a lost item, a changed one, or one that turned from readings to looks. */
export function minorFaults(before: Checklist, after: Checklist): string[] {
  const items = new Map(after.items.map((item) => [item.id, item]));
  return [
    ...(same(before.k, after.k) && same(before.credits, after.credits) ? [] : ['the factors or credits changed']),
    ...(same(before.zones, after.zones) ? [] : ['the zones changed']),
    // Remedies decide the verdict, hazards and facts what an item means: more may come, none may change.
    ...lostOf('remedy', before.remedies.map(deciding), after.remedies.map(deciding)),
    ...lostOf('hazard', before.hazards, after.hazards),
    ...lostOf('fact', before.facts, after.facts),
    ...before.items.flatMap((item) => {
      const later = items.get(item.id);
      if (later === undefined) return [`${item.id} is gone`];
      const changed = KEPT.filter((part) => !same(item[part], later[part]));
      const turned = item.kind !== later.kind && item.kind !== 'look';
      const readings = (['measure', 'derive'] as const).filter(
        (part) => item[part] !== undefined && !same(item[part], later[part]),
      );
      return [
        ...readings.map((part) => `${item.id} is read by another ${part}`),
        ...changed.map((part) => `${item.id} has another ${part}`),
        ...(turned ? [`${item.id} turned from ${item.kind} to ${later.kind}`] : []),
      ];
    }),
  ];
}

/** What a remedy takes decides nothing: it may be said, or said better, later. */
function deciding({ parts: _parts, timeMin: _timeMin, ...remedy }: Remedy): Omit<Remedy, 'parts' | 'timeMin'> {
  return remedy;
}

function lostOf(what: string, before: readonly { id: string }[], after: readonly { id: string }[]): string[] {
  const later = new Map(after.map((one) => [one.id, one]));
  return before.flatMap((one) => (same(one, later.get(one.id)) ? [] : [`${what} ${one.id} is gone or another`]));
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
