import { describe, it } from 'vitest';
import { expectRefused, type Refusal } from './expect-refused.ts';

describe('a remedy', () => {
  const settles = (...list: [item: string, leaves: string][]) => ({
    'remedies[0].settles': list.map(([item, leaves]) => ({ item, leaves })),
  });

  it.each<Refusal>([
    [
      'settles a stop item',
      settles(['swollen', 'sound']),
      'remedies[0].settles[0].item',
      '"swollen" is a stop item, which no remedy settles',
    ],
    [
      'leaves a grade the item has not',
      settles(['lid-fit', 'passable']),
      'remedies[0].settles[0].leaves',
      '"lid-fit" has no grade passable',
    ],
    [
      'settles one item twice',
      settles(['cell-vents', 'sound'], ['cell-vents', 'weak']),
      'remedies[0].settles[1].item',
      '"cell-vents" is settled twice',
    ],
    ['settles nothing', settles(), 'remedies[0].settles', 'is empty'],
  ])('is refused when it %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });
});
