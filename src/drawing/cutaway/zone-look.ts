import type { Ink, Stroke } from '../display-list.ts';

export type ZoneState = 'todo' | 'next' | 'done';

/** How the parts of a zone are drawn: strong when it is the one to do next, calm once it is done. */
export function zoneStroke(state: ZoneState, width = 1.5): Stroke {
  const stroke: Stroke = { ink: zoneInk(state), width, cap: 'round', join: 'round' };
  if (state === 'next') return { ...stroke, width: width * 1.5 };
  return stroke;
}

export function zoneInk(state: ZoneState): Ink {
  return state === 'done' ? 'muted' : 'ink';
}
