import { createHash } from 'node:crypto';
import type { DemoPack } from '../../../src/app/demo/demo-pack.ts';
import { DIPPER } from '../../../src/app/demo/dipper.ts';
import { entriesOf } from '../../../src/app/demo/entries-of.ts';
import { readDemoLog } from '../../../src/app/demo/live/read-demo-log.ts';
import { WREN } from '../../../src/app/demo/wren.ts';
import { provisionalEntries } from '../../../src/app/state/provisional.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { SealInput } from '../../../src/sheet/model/sealed/sealed-text.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';

/** 2026-11-25T14:00Z. */
export const NOW_MS = Date.UTC(2026, 10, 25, 14);
export const CHECKLIST_SHA256 = 'c'.repeat(64);

export const sha256 = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');

/** The two invented packs as they would be sealed, with stamps as storage draws them. */
export const WREN_SEAL = await sealOf(WREN);
export const DIPPER_SEAL = await sealOf(DIPPER);

async function sealOf(pack: DemoPack): Promise<SealInput> {
  const logs = await Promise.all(
    pack.tests.logs.map((log) => readDemoLog(log, (bytes) => Promise.resolve(sha256(bytes)))),
  );
  const puts = entriesOf(pack, {
    checklist: { id: builtIn.id, version: builtIn.version, sha256: CHECKLIST_SHA256 },
    // Stands for bytes that only a browser can paint.
    painted: pack.photos.map((_, place) => ({
      sha256: sha256(`${pack.packId} ${place}`),
      byteCount: 100_000,
      widthPx: 1600,
      heightPx: 1200,
    })),
    logs,
    nowMs: NOW_MS,
    utcOffsetMinutes: 60,
  });
  const drawn = JSON.stringify(provisionalEntries(pack.packId, [], puts)).replaceAll(
    '999999999999999.',
    `${String(NOW_MS).padStart(15, '0')}.`,
  );
  return deepFreeze({
    packId: pack.packId,
    entries: JSON.parse(drawn) as Entry[],
    definition: builtIn,
    earlier: null,
    appVersion: '0.1.0',
    revision: 1,
    closedAtMs: NOW_MS,
  });
}
