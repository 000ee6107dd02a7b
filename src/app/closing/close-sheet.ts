import { liftEntry } from '../../migrations/lift-entry.ts';
import { sha256Hex } from '../../photos/sha256-hex.ts';
import { nextRevision } from '../../record/fold-closings.ts';
import { momentAfterMs } from '../../record/moment-after.ts';
import { entriesText } from '../../record/sealed-entries.ts';
import { recheck } from '../../sheet/model/sealed/recheck.ts';
import { sealedText } from '../../sheet/model/sealed/sealed-text.ts';
import type { WriteProblem } from '../../storage/store.ts';
import { APP_VERSION } from '../app-version.ts';
import type { PackSession } from '../state/pack-session.ts';

/**
 * Seals the record as it is stored and closes the sheet, in one transaction. Null, or why nothing was closed. What
 * arrives meanwhile is in no revision, and told from what was sealed.
 *
 * Throws  RangeError if the JSON could not be rechecked: then nothing is closed.
 */
export async function closeSheet(session: PackSession, nowMs: number): Promise<WriteProblem | null> {
  await session.flush();
  const { saving } = session;
  if (saving.value.now === 'notSaved') return saving.value.problem;
  const { packId, definition, earlier } = session;
  const entries = session.entries.value;
  const { score, verdict, settled } = session.grading.value;
  const record = session.record.value;
  const { sheet } = record;
  const revision = nextRevision(record);
  const closedAtMs = momentAfterMs(record, nowMs);
  const revises = sheet.now === 'revising' ? { reason: sheet.reason, after: sheet.sha256 } : undefined;
  const sealed = sealedText({
    packId,
    entries,
    definition: definition.definition,
    earlier: earlier?.definition ?? null,
    appVersion: APP_VERSION,
    revision,
    closedAtMs,
    ...(revises && { revises }),
  });
  comesOutAgain(sealed);
  const bytes = bytesOf(sealed);
  const sha256 = await sha256Hex(bytes);
  const v = {
    revision,
    closedAtMs,
    appVersion: APP_VERSION,
    byteCount: bytes.byteLength,
    entriesSha256: await entriesSha256(entries),
    score: score && { low: score.low, high: score.high },
    verdict: { low: verdict.low, high: verdict.high },
    settled,
    ...revises,
  };
  return session.putNowOrNever({
    puts: [{ subject: 'closing', part: sha256, v }],
    photos: [{ sha256, shelf: 'sealed', content: { type: 'application/json', bytes } }],
  });
}

/** A published sheet must be checkable: every phone that rechecks it does as is done here. */
function comesOutAgain(sealed: string): void {
  const again = recheck(sealed, liftEntry);
  const isSame =
    again.outcome === 'rechecked' &&
    again.canonical &&
    [again.differences, again.missing, again.extra].every(({ length }) => length === 0);
  if (isSame) return;
  const found = again.outcome === 'damaged' ? `${again.part} ${again.place}: ${again.reason}` : again.outcome;
  throw new RangeError(`closeSheet: the sealed JSON must come out again, got ${found}`);
}

/** What `closing.entriesSha256` says of the entries of a record. */
export function entriesSha256(entries: PackSession['entries']['value']): Promise<string> {
  return sha256Hex(bytesOf(entriesText(entries)));
}

function bytesOf(text: string): ArrayBuffer {
  return new TextEncoder().encode(text).buffer;
}
