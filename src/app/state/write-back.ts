import { cardFromEntries } from '../card-of.ts';
import { opened } from './open-pack.ts';
import { isProvisional } from './provisional.ts';
import { goOn } from './reach-records.ts';
import { store } from './store.ts';

/** Writes what this page still holds of the open pack into records that were cleared; its photos are not in it. */
export async function writeBack(): Promise<void> {
  const now = opened.peek();
  if (now.state === 'open') {
    const { packId, definition, entries } = now.session;
    const held = entries.peek().filter(({ at }) => !isProvisional(at));
    const result = await store().mergeIn({
      packId,
      entries: held,
      bytes: [],
      definitions: [{ sha256: definition.sha256, text: definition.text }],
      cardOf: (all) => cardFromEntries(packId, all, definition.definition),
      bringBackDeleted: false,
    });
    if (!result.ok) console.error('records: not written back', result.problem, result.detail);
  }
  await goOn();
}
