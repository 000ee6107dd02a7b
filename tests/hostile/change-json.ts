import type { Dice } from './dice.ts';
import { HIDDEN, SCRIPTS } from './hostile-texts.ts';

type Owner = Record<string, unknown>;

/** Values that a JSON file may hold anywhere. */
const VALUES: readonly unknown[] = [
  ...[null, true, false, 0, -0, 1, -1, 0.5, 1e21, 1e308, -1e308, 5e-324, 2 ** 53, 1000, 100, 4, 253_370_764_800_000],
  ...[
    '',
    'x',
    ' ',
    'constructor',
    '__proto__',
    'x'.repeat(121),
    'x'.repeat(2001),
    '2026-11-24',
    'EUR',
    'sound',
    'failed',
  ],
  ...SCRIPTS,
  ...HIDDEN.map((character) => `a${character}b`),
  '\ud83d',
  'f'.repeat(32),
  'f'.repeat(64),
  [],
  {},
  [[]],
  [null],
  { kind: 'open', note: 'x' },
];

/** The value with one to three places in it set, taken out, doubled, exchanged or added. */
export function changedJson(value: unknown, dice: Dice): unknown {
  const whole = { root: structuredClone(value) };
  for (let times = dice.of([1, 1, 1, 2, 3]); times > 0; times -= 1) changeOnce(whole, dice);
  return whole.root;
}

function changeOnce(whole: Owner, dice: Dice): void {
  const [owner, key] = place(whole, dice);
  switch (dice.below(6)) {
    case 0:
      delete owner[key];
      break;
    case 1:
      if (Array.isArray(owner)) owner.push(structuredClone(owner[Number(key)]));
      else owner[`${key}${dice.of(['2', '\u202e', '', '-x'])}`] = owner[key];
      break;
    case 2: {
      const [other, otherKey] = place(whole, dice);
      const kept = structuredClone(other[otherKey]);
      owner[key] = kept;
      break;
    }
    case 3:
      owner[key] = structuredClone(dice.of(VALUES));
      break;
    default: {
      // Of the kind that is there: it gets past the first question.
      const now = owner[key];
      const alike = VALUES.filter((value) => typeof value === typeof now);
      owner[key] = structuredClone(dice.of(alike.length > 0 ? alike : VALUES));
    }
  }
}

/** A place some steps down; the deeper the likelier, as most of a file lies deep. */
function place(whole: Owner, dice: Dice): [owner: Owner, key: string] {
  let owner = whole;
  let key = 'root';
  for (;;) {
    const inside = owner[key];
    const keys = typeof inside === 'object' && inside !== null ? Object.keys(inside) : [];
    if (keys.length === 0 || (key !== 'root' && dice.chance(0.15))) return [owner, key];
    owner = inside as Owner;
    key = dice.of(keys);
  }
}
