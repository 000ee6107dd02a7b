import type { Checklist } from '../checklist.ts';

/** One reason to refuse a definition. `place` is a path like `items[3].grades.weak`; the reason is in plain words. */
export interface Problem {
  place: string;
  reason: string;
}

/** One check on a definition whose shape is right. */
export type DefinitionCheck = (definition: Checklist) => Problem[];
