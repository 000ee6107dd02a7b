import { randomId } from '../storage/open-store.ts';
import type { Put } from '../storage/store.ts';
import { builtInDefinition } from './state/definitions.ts';
import { PackSession } from './state/pack-session.ts';

/** Begins a pack: it exists from this moment, graded by the built-in checklist. Returns its id, or null if not saved. */
export async function newPack(): Promise<string | null> {
  const loaded = await builtInDefinition();
  const packId = randomId();
  const session = new PackSession(packId, loaded, []);
  const { id, version } = loaded.definition;
  const puts: Put[] = [
    { subject: 'pack', part: 'made', v: {} },
    { subject: 'pack', part: 'checklist', v: { id, version, sha256: loaded.sha256 } },
    { subject: 'pack', part: 'route', v: 'whole' },
    { subject: 'nameplate', part: 'sample', v: '1' },
  ];
  const saved = await session.put({ puts, definition: { sha256: loaded.sha256, text: loaded.text } });
  return saved ? packId : null;
}
