import type { Checklist, Item } from '../schema/checklist.ts';
import type { PackState } from '../schema/pack-states.ts';
import { factSays, knownFacts } from './facts.ts';
import type { Judged } from './judged.ts';
import { answerOf, isAsked } from './outcomes.ts';

/**
 * The items that "the rest of this zone is sound" may answer, in definition order: unanswered `look` items of the
 * present state, asked on the route, with a sound grade, whose facts are settled. Never safety, stop or severity I.
 * An item with only a note counts as unanswered: whoever writes the answers carries the note over.
 *
 * Source  DESIGN §5, last paragraph on properties
 * Check   tests/grading/rest-is-sound.test.ts
 */
export function restIsSound(
  definition: Checklist,
  record: Judged,
  { zoneId, state }: { zoneId: string; state: PackState },
): string[] {
  const known = knownFacts(definition, record.facts);
  const isUnanswered = (item: Item): boolean => (answerOf(record, item.id)?.kind ?? 'open') === 'open';
  return definition.items
    .filter((item) => item.kind === 'look' && item.zone === zoneId && item.state === state)
    .filter((item) => !item.safety && !item.stop && item.severity !== 1 && item.grades.sound !== undefined)
    .filter((item) => isAsked(item, record.route) && isUnanswered(item) && factSays(item, known) === 'applies')
    .map(({ id }) => id);
}
