import { describe, it } from 'vitest';
import { expectRefused, type Refusal } from './expect-refused.ts';

describe('the grades of an item', () => {
  it.each<Refusal>([
    [
      'one alone',
      { 'items[2].grades': { sound: 'Even.' } },
      'items[2].grades',
      'has 1 of the at least two grades an item offers',
    ],
    ['none', { 'items[2].grades': {} }, 'items[2].grades', 'has 0 of the at least two grades an item offers'],
    [
      'a stop item without failed',
      { 'items[1].grades': { sound: 'Flat.', weak: 'Bulged.' } },
      'items[1].grades',
      'a stop item must have the grade failed, the only one it acts on',
    ],
    [
      'the same words twice',
      { 'items[0].grades.failed': 'One behind tape.' },
      'items[0].grades.failed',
      'has the same words as weak',
    ],
    [
      'the same words in other case and punctuation',
      { 'items[0].grades.failed': '“One”, behind TAPE' },
      'items[0].grades.failed',
      'has the same words as weak',
    ],
  ])('are refused with %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });

  it.each(['unknown', 'unsure', 'unclear', 'not stated', 'not known'])('are refused when one says "%s"', (words) => {
    const text = `The fit is ${words}.`;
    expectRefused(
      { 'items[2].grades.weak': text },
      'items[2].grades.weak',
      `says "${words}": that is not seen, which is not a grade`,
    );
  });

  it('are refused when one begins with "Unknown"', () => {
    expectRefused(
      { 'items[2].grades.weak': 'Unknown fit.' },
      'items[2].grades.weak',
      'says "Unknown": that is not seen, which is not a grade',
    );
  });
});
