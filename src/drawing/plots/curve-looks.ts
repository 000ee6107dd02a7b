import type { Stroke } from '../display-list.ts';

/** How curves over one another are told apart without colour: by dash and weight. */
const LOOKS: readonly Stroke[] = [
  { ink: 'ink', width: 1.9, join: 'round', cap: 'round' },
  { ink: 'ink', width: 1.7, join: 'round', dash: [7, 3] },
  { ink: 'ink', width: 1.9, join: 'round', dash: [2, 2.6] },
  { ink: 'ink', width: 1.1, join: 'round', cap: 'round' },
  { ink: 'ink', width: 1.5, join: 'round', dash: [9, 3, 2, 3] },
  { ink: 'ink', width: 1.1, join: 'round', dash: [4, 3] },
];

/** The look of the n-th curve; from the seventh on looks come again, and only the name at the end tells. */
export function curveLook(place: number): Stroke {
  return LOOKS[place % LOOKS.length] ?? { ink: 'ink', width: 1.7 };
}
