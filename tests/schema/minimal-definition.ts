/**
 * The least a definition can be while every refusal has something to break: one zone, one hazard, one fact, a safety
 * item, a stop item, an item that may not apply, one remedy. Fresh at every call.
 */
export function minimalDefinition(): unknown {
  const plain = {
    kind: 'look',
    zone: 'case',
    state: 'untouched',
    route: 'short',
    weight: 1,
    title: 'Part',
    ask: 'How is it?',
    look: 'Look at it.',
    why: 'It matters.',
    basis: [{ kind: 'commonPractice' }],
  };
  return {
    id: 'minimal',
    version: '1.0.0',
    status: 'draft',
    title: 'Minimal',
    fits: 'Nothing real.',
    zones: [{ id: 'case', title: 'Case', weight: 1 }],
    hazards: [{ id: 'relief', title: 'Relief', harm: 'Gas finds no way out.' }],
    k: { high: 0.4, serious: 0.7, medium: 0.95, low: 1 },
    credits: { sound: 1, passable: 0.75, weak: 0.35, failed: 0 },
    facts: [
      {
        id: 'metal-case',
        state: 'arrival',
        ask: 'Is the case metal?',
        choices: [
          { id: 'yes', text: 'Yes' },
          { id: 'no', text: 'No' },
        ],
      },
    ],
    items: [
      {
        ...plain,
        id: 'cell-vents',
        safety: true,
        hazard: 'relief',
        severity: 1,
        grades: {
          sound: 'All free.',
          passable: 'A wire near one.',
          weak: 'One behind tape.',
          failed: 'Several sealed.',
        },
      },
      { ...plain, id: 'swollen', stop: true, grades: { sound: 'Flat.', failed: 'Swollen.' } },
      {
        ...plain,
        id: 'lid-fit',
        route: 'whole',
        onlyIf: { fact: 'metal-case', is: 'yes' },
        mayNotApply: ['glued shut'],
        grades: { sound: 'Even.', weak: 'Gaps.' },
      },
    ],
    remedies: [
      {
        id: 'free-vents',
        text: 'Free them.',
        reach: 'workshop',
        settles: [{ item: 'cell-vents', leaves: 'passable' }],
      },
    ],
  };
}

/** The minimal definition with some places set to another value; `undefined` takes the field away. */
export function minimalDefinitionWith(changes: Readonly<Record<string, unknown>>): unknown {
  const definition = minimalDefinition();
  for (const [place, value] of Object.entries(changes)) setAt(definition, place, value);
  return definition;
}

function setAt(whole: unknown, place: string, value: unknown): void {
  const keys = place.match(/[^.[\]]+/g) ?? [];
  const last = keys.pop();
  const owner = keys.reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], whole);
  if (last === undefined || typeof owner !== 'object' || owner === null) throw new Error(`no place ${place}`);
  if (value === undefined) delete (owner as Record<string, unknown>)[last];
  else (owner as Record<string, unknown>)[last] = value;
}
