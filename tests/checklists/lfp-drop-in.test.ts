import { describe, expect, it } from 'vitest';
import { builtIn } from './built-in.ts';

/** DESIGN §4: "60–80 items, about 30 on the short route, about 15 safety". What every checklist keeps to: every-definition.test.ts. */
const { items, zones } = builtIn;

describe('the first checklist, lfp-drop-in', () => {
  it('has the 6 zones of the cutaway', () => {
    expect(zones.map(({ id }) => id).toSorted()).toEqual(['bms', 'cells', 'enclosure', 'sensors', 'vents', 'wiring']);
  });

  it('has 60–80 items and the few a minor version added, 28–36 of them on the short route and 13–18 safety', () => {
    expectWithin(items.length, 60, 90);
    expectWithin(items.filter(({ route }) => route === 'short').length, 28, 36);
    expectWithin(items.filter(({ safety }) => safety).length, 13, 18);
  });
});

function expectWithin(count: number, least: number, most: number): void {
  expect(count).toBeGreaterThanOrEqual(least);
  expect(count).toBeLessThanOrEqual(most);
}
