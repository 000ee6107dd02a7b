import type { RecordTake } from '../../record/pack-record.ts';
import { markWords as say } from '../../text/shoot-clock.ts';

/** What a take is called: its label, or its number in the order in which they were begun. */
export function takeTitle(take: Pick<RecordTake, 'id' | 'label'>, takes: readonly Pick<RecordTake, 'id'>[]): string {
  return take.label ?? say.take(takes.findIndex(({ id }) => id === take.id) + 1);
}
