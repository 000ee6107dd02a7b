import { expect } from 'vitest';
import { readChecklist } from '../../src/app/keep/read-checklist.ts';
import { fileRefusal, HEAD_BYTES } from '../../src/app/logs/file-refusal.ts';
import { CURVE_POINTS, runFromLog } from '../../src/app/logs/run-from-log.ts';
import { curveOf, overviewOf } from '../../src/logs/curve-of.ts';
import { guessMapping } from '../../src/logs/guess-mapping.ts';
import { OVERVIEW_POINTS } from '../../src/logs/log-messages.ts';
import { previewOf } from '../../src/logs/preview-of.ts';
import { readLog } from '../../src/logs/read-log.ts';
import { runsOf } from '../../src/logs/runs-of.ts';
import { runIntake } from '../../src/photos/run-intake.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import { checkEntry } from '../../src/schema/check-entry.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { readBundle, type VerifiedPart } from '../../src/storage/bundle/read-bundle.ts';
import { builtIn } from '../checklists/built-in.ts';
import { DEVICE, PACK, stampAt } from '../record/made-entries.ts';
import { sha256 } from './sound-bench.ts';
import { tinyJpeg } from './tiny-pictures.ts';

export type HandedIn = { refused: string } | { refused: null; changed: string[] };
const TAKEN = { refused: null, changed: [] };

/** What the reader of a bundle says of one, and what it holds. */
export async function handInBundle(bytes: Uint8Array<ArrayBuffer>): Promise<HandedIn & { bundle?: VerifiedPart }> {
  const read = await readBundle(new Blob([bytes]));
  if (!read.ok) return { refused: read.refusal };
  return {
    refused: null,
    changed: read.bundle.textChanges.flatMap(({ characters }) => characters),
    bundle: read.bundle,
  };
}

/** As Keep does with a checklist of one's own: text, JSON, check; none that takes the name of one that is built in. */
export function handInDefinition(bytes: Uint8Array<ArrayBuffer>): HandedIn & { definition?: Checklist } {
  const read = readChecklist(bytes.slice().buffer);
  if (!read.ok) {
    expect(read.lines.every(({ place }) => place.trim() !== '')).toBe(true);
    const problems = read.lines.length > 0 ? problemsOf(bytes) : [];
    return { refused: problems.length > 0 ? problems.join('; ') : read.sentence };
  }
  const { definition } = read;
  if (definition.id === builtIn.id && definition.version === builtIn.version) return { refused: 'taken by another' };
  return { ...TAKEN, definition };
}

/** The places by their paths, where the screen names them in words. */
function problemsOf(bytes: Uint8Array): string[] {
  try {
    const checked = checkDefinition(JSON.parse(new TextDecoder().decode(bytes)));
    return checked.ok ? [] : checked.problems.map(({ place, reason }) => `${place} ${reason}`);
  } catch (error) {
    if (error instanceof SyntaxError) return [];
    throw error;
  }
}

/** As the screen and its worker do: look at the file, guess, show, read, cut into runs, and make each run an entry. */
export function handInLog(bytes: Uint8Array<ArrayBuffer>): HandedIn {
  const because = fileRefusal({ byteCount: bytes.byteLength, head: bytes.subarray(0, HEAD_BYTES) });
  if (because !== null) return { refused: because };
  const mapping = guessMapping(bytes);
  previewOf(bytes, mapping.layout);
  const steps = readLog(bytes, mapping);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const reading = step.value;
  if (reading.refused !== undefined) return { refused: reading.refused };
  const { counts, columns } = reading;
  if (counts.rowsRead !== columns.timeS.length + counts.merged + counts.rejected)
    throw new Error('a row went uncounted');
  overviewOf(reading, OVERVIEW_POINTS);
  const runs = runsOf(reading, { cellsInSeries: 8, cutOffVoltageV: 20 });
  for (const place of runs.keys()) {
    const run = runs[place];
    if (run === undefined) continue;
    const curve = curveOf(reading, run, CURVE_POINTS);
    const rowCount = run.lastIndex - run.firstIndex + 1;
    const value = runFromLog({
      runs,
      place,
      curve,
      logId: sha256(bytes),
      mapping,
      rowCount,
      startedAtMs: reading.startedAtMs,
    });
    const at = stampAt(1000);
    const check = checkEntry({
      key: [PACK, 'run', '1'.repeat(32)],
      v: JSON.parse(JSON.stringify({ ...value, made: at })),
      at,
      by: DEVICE,
    });
    if (!check.ok) throw new Error(`a run could not be kept: ${check.reason}`);
  }
  return TAKEN;
}

/** As the photo worker does, with a decoder that hands back a sound picture: what never reaches it was refused by its bytes. */
export async function handInPicture(bytes: Uint8Array<ArrayBuffer>): Promise<HandedIn> {
  const decoded = { bytes: tinyJpeg(9).buffer, widthPx: 64, heightPx: 48 };
  const { intake } = await runIntake({
    file: new Blob([bytes], { type: 'image/jpeg' }),
    options: { detail: false, keepOriginal: true },
    path: 'worker',
    shrink: async () => ({ ok: true, picture: decoded, thumb: decoded }),
    onStep: () => {},
  });
  if (!intake.ok) return { refused: intake.problem };
  // What is kept of the original holds nothing but the picture.
  const kept = Buffer.from(intake.photo.original?.bytes ?? new ArrayBuffer(0)).toString('latin1');
  if (/script|PK/.test(kept)) throw new Error('the kept original holds more than a picture');
  return TAKEN;
}
