import type { WriteProblem } from '../../storage/store.ts';
import { cardFromEntries } from '../card-of.ts';
import type { PackSession } from './pack-session.ts';
import { goOn } from './reach-records.ts';
import { store } from './store.ts';
import { sessionsInHand } from './unsaved-sessions.ts';

/**
 * Writes what this page still holds of its packs into records that were cleared; their photos are not in it. Null, or why
 * one could not be written: then nothing is read again, because this page holds the only copy.
 */
export async function writeBack(): Promise<WriteProblem | null> {
  for (const session of sessionsInHand()) {
    const problem = await writeSession(session);
    if (problem !== null) return problem;
  }
  await goOn();
  return null;
}

async function writeSession({ packId, definition, earlier, written }: PackSession): Promise<WriteProblem | null> {
  const definitions = [definition, ...(earlier === null ? [] : [earlier])];
  const result = await store().mergeIn({
    packId,
    entries: written,
    bytes: [],
    definitions: definitions.map(({ sha256, text }) => ({ sha256, text })),
    cardOf: (all) => cardFromEntries(packId, all, definition.definition),
    bringBackDeleted: false,
  });
  if (result.ok) return null;
  console.error('records: not written back', result.problem, result.detail);
  return result.problem;
}
