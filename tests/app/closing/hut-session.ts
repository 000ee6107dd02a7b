import { PackSession } from '../../../src/app/state/pack-session.ts';
import { setStore } from '../../../src/app/state/store.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { Put, Store } from '../../../src/storage/store.ts';
import { HUT_CHECKLIST } from '../../sheet/hut-pack.ts';
import { HUT_SEAL } from '../../sheet/sealed/hut-seal.ts';
import { cardOf, newPhone, type Phone, storeOn } from '../../storage/open-test-store.ts';

export const HUT = HUT_SEAL.packId;
const LOADED = { definition: HUT_CHECKLIST, text: '', sha256: 'c'.repeat(64) };

/** The hut pack on a phone of its own, opened. */
export async function hutSession(
  phone: Phone = newPhone(),
): Promise<{ phone: Phone; store: Store; session: PackSession }> {
  const store = await storeOn(phone);
  setStore(store);
  if ((await store.entriesOf(HUT)).length === 0) {
    const puts = HUT_SEAL.entries.map(({ key: [, subject, part], v }): Put => ({ subject, part, v }));
    const result = await store.write({ packId: HUT, puts, card: cardOf(HUT)([]) });
    if (!result.ok) throw new Error(result.detail);
  }
  return { phone, store, session: await openedAgain(store) };
}

/** As after a reload of the page; `more` entries lie beside those that are stored. */
export async function openedAgain(store: Store, more: readonly Entry[] = []): Promise<PackSession> {
  return new PackSession(HUT, LOADED, [...(await store.entriesOf(HUT)), ...more]);
}

export const tidyIs = (grade: string) => ({
  puts: [{ subject: 'answer', part: 'tidy', v: { kind: 'grade', grade, evidence: 'seen' } }],
  undoLabel: `Tidy: ${grade}`,
});
