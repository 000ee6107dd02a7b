import { describe, it } from 'vitest';
import { expectRefused, type Refusal } from './expect-refused.ts';

describe('hazard, severity and likelihood', () => {
  const STATED = { failed: 'C', because: 'It needs a second fault.' };
  const falls = (words: string) => `falls ${words}: a worse grade is never less likely to harm`;

  it.each<Refusal>([
    [
      'a hazard without severity',
      { 'items[0].severity': undefined },
      'items[0].severity',
      'is missing: an item with a hazard needs its severity',
    ],
    ['a severity without hazard', { 'items[2].severity': 3 }, 'items[2].severity', 'is given without a hazard'],
    [
      'a likelihood without hazard',
      { 'items[2].likelihood': STATED },
      'items[2].likelihood',
      'is given without a hazard',
    ],
    [
      'failed stated under weak by rule',
      { 'items[0].likelihood': { ...STATED, failed: 'E' } },
      'items[0].likelihood',
      falls('from D at weak to E at failed'),
    ],
    [
      'weak stated over failed by rule',
      { 'items[0].likelihood': { weak: 'A', because: 'Made up.' } },
      'items[0].likelihood',
      falls('from A at weak to B at failed'),
    ],
    [
      'passable stated over weak by rule',
      { 'items[0].likelihood': { passable: 'C', because: 'Made up.' } },
      'items[0].likelihood',
      falls('from C at passable to D at weak'),
    ],
    [
      'both stated, falling',
      { 'items[0].likelihood': { weak: 'C', failed: 'D', because: 'Made up.' } },
      'items[0].likelihood',
      falls('from C at weak to D at failed'),
    ],
    [
      'weak stated at B where failed of an item that is not safety is C',
      { 'items[0].safety': false, 'items[0].likelihood': { weak: 'B', because: 'Made up.' } },
      'items[0].likelihood',
      falls('from B at weak to C at failed'),
    ],
    [
      'passable stated over a failed with no weak between',
      { 'items[0].grades.weak': undefined, 'items[0].likelihood': { passable: 'A', because: 'Made up.' } },
      'items[0].likelihood',
      falls('from A at passable to B at failed'),
    ],
  ])('are refused with %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });
});
