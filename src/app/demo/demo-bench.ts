import { sha256Hex } from '../../photos/sha256-hex.ts';
import type { NewPhotoBytes, WriteProblem } from '../../storage/store.ts';
import { cardFromEntries } from '../card-of.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { loadTypeface } from '../load-typeface.ts';
import { refreshBench } from '../state/bench.ts';
import { builtInDefinition, type LoadedDefinition } from '../state/definitions.ts';
import { eraseFromPhone } from '../state/kept.ts';
import { dropOpenPack } from '../state/open-pack.ts';
import { provisionalEntries } from '../state/provisional.ts';
import { store } from '../state/store.ts';
import type { DemoPack } from './demo-pack.ts';
import { DIPPER } from './dipper.ts';
import { entriesOf } from './entries-of.ts';
import { readDemoLog } from './live/read-demo-log.ts';
import { type PaintedPicture, paintPicture } from './paint-picture.ts';
import { WREN } from './wren.ts';

/** The Bench shows the one written last on top. */
const PACKS: readonly DemoPack[] = [DIPPER, WREN];

/**
 * Lays the two invented packs on the bench, each in one transaction. What is left of an earlier demo bench goes first.
 * Returns null, or why it could not be written: then no trace of it stays.
 */
export async function layOutDemo(): Promise<WriteProblem | null> {
  const inTheWay = await erasePacks();
  if (inTheWay !== null) return inTheWay;
  const [definition] = await Promise.all([builtInDefinition(), loadTypeface()]);
  for (const pack of PACKS) {
    const problem = await layOut(pack, definition);
    if (problem === null) continue;
    await erasePacks();
    await refreshBench();
    return problem;
  }
  await refreshBench();
  return null;
}

/** Takes every trace of the two packs off this phone; null, or why that failed. */
export async function putDemoAway(): Promise<WriteProblem | null> {
  const problem = await erasePacks();
  await refreshBench();
  return problem;
}

async function erasePacks(): Promise<WriteProblem | null> {
  for (const { packId } of PACKS) {
    const problem = await eraseFromPhone(packId);
    if (problem !== null) return problem;
    dropOpenPack(packId);
  }
  return null;
}

async function layOut(pack: DemoPack, { definition, sha256, text }: LoadedDefinition): Promise<WriteProblem | null> {
  const { packId } = pack;
  const painted: PaintedPicture[] = [];
  for (const { drawing, palette } of pack.photos) painted.push(await paintPicture(drawing, palette));
  const logs: Awaited<ReturnType<typeof readDemoLog>>[] = [];
  for (const log of pack.tests.logs) logs.push(await readDemoLog(log, sha256Hex));
  const nowMs = Date.now();
  const puts = entriesOf(pack, {
    checklist: { id: definition.id, version: definition.version, sha256 },
    painted,
    logs,
    nowMs,
    utcOffsetMinutes: utcOffsetMinutes(nowMs),
  });
  const card = cardFromEntries(packId, provisionalEntries(packId, [], puts), definition);
  const photos = [...painted.flatMap(bytesOf), ...logs.map(logBytes)];
  const result = await store().write({ packId, puts, card, photos, definition: { sha256, text } });
  if (result.ok) return null;
  console.error('demo bench: not written', result.problem, result.detail);
  return result.problem;
}

function logBytes({ sha256, bytes }: { sha256: string; bytes: ArrayBuffer }): NewPhotoBytes {
  return { sha256, shelf: 'logs', content: { type: 'text/csv', bytes } };
}

function bytesOf({ sha256, bytes, thumbBytes }: PaintedPicture): NewPhotoBytes[] {
  const type = 'image/jpeg';
  return [
    { sha256, shelf: 'photos', content: { type, bytes } },
    { sha256, shelf: 'thumbs', content: { type, bytes: thumbBytes } },
  ];
}
