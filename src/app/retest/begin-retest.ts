import { NAMEPLATE_BELONGS } from '../../grading/nameplate-belongs.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { RetestOf } from '../../schema/closing.ts';
import { NAMEPLATE_FIELDS } from '../../schema/nameplate.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';
import { words } from '../../text/words.ts';
import { newestOnBoard } from '../regrade/newest-on-board.ts';
import type { LoadedDefinition } from '../state/definitions.ts';
import { PackSession } from '../state/pack-session.ts';

/** What a new pack is begun with: claims of the earlier one, a sample number of its own, and where it comes from. */
export function retestPuts(
  earlier: PackRecord,
  { kind, sample, checklist }: { kind: RetestOf['kind']; sample: string; checklist: PackRecord['checklist'] },
): Put[] {
  const { nameplate } = earlier;
  const label = words.packLabel(nameplate.name ?? '', nameplate.sample ?? '').slice(0, MAX_LINE);
  const retestOf: RetestOf = { packId: earlier.packId, kind, label };
  const taken = NAMEPLATE_FIELDS.filter((field) => NAMEPLATE_BELONGS[field].taken && nameplate[field] !== undefined);
  return [
    // What is begun from an invented pack is as invented as its claims.
    { subject: 'pack', part: 'made', v: earlier.demo ? { demo: true } : {} },
    { subject: 'pack', part: 'checklist', v: checklist },
    { subject: 'pack', part: 'route', v: earlier.route },
    { subject: 'pack', part: 'retestOf', v: retestOf },
    ...taken.map((field): Put => ({ subject: 'nameplate', part: field, v: nameplate[field] })),
    { subject: 'nameplate', part: 'sample', v: sample },
  ];
}

/**
 * Begins a new pack from one that was tested before, graded by the newest version of its checklist on this phone.
 * Returns its id, or null if it was not saved.
 */
export async function beginRetest(
  earlier: PackRecord,
  by: LoadedDefinition,
  { kind, sample }: { kind: RetestOf['kind']; sample: string },
): Promise<string | null> {
  const loaded = (await newestOnBoard(by.definition.id)) ?? by;
  const packId = randomId();
  const { id, version } = loaded.definition;
  const puts = retestPuts(earlier, { kind, sample, checklist: { id, version, sha256: loaded.sha256 } });
  const session = new PackSession(packId, loaded, []);
  const saved = await session.put({ puts, definition: { sha256: loaded.sha256, text: loaded.text } });
  return saved ? packId : null;
}
