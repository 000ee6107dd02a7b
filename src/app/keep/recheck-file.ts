import { liftEntry } from '../../migrations/lift-entry.ts';
import { sha256Hex } from '../../photos/sha256-hex.ts';
import { MAX_SEALED_BYTES } from '../../schema/sealed-sheet.ts';
import { type Rechecked, recheck } from '../../sheet/model/sealed/recheck.ts';
import { recheckWords as say } from '../../text/recheck.ts';
import { type KnownChecklist, knownChecklist } from './known-checklist.ts';

export interface RecheckedFile extends Omit<Rechecked, 'outcome' | 'canonicalText'> {
  ok: true;
  /** SHA-256 of the file as it is, and of the sealed form of its content. */
  fileSha256: string;
  contentSha256: string;
  known: KnownChecklist;
  /** The same of what it was graded by before it was carried over. */
  earlierKnown: KnownChecklist | null;
}
export type FileRecheck = RecheckedFile | { ok: false; sentence: string; where: string | null };

/**
 * Rechecks the file a person chose. Nothing is written. On the main thread: a whole record takes some 40 ms on a laptop,
 * and the size is bounded.
 */
export async function recheckFile(file: File): Promise<FileRecheck> {
  if (file.size > MAX_SEALED_BYTES) return refused(say.refused.tooLarge);
  const bytes = await file.arrayBuffer();
  const text = textOf(bytes);
  if (text === null) return refused(say.refused.notText);
  const result = recheck(text, liftEntry);
  if (result.outcome === 'damaged') {
    return { ok: false, sentence: say.damaged[result.part], where: say.where(result.place, result.reason) };
  }
  if (result.outcome !== 'rechecked') return refused(say.refused[result.outcome]);
  const { outcome: _, canonicalText, ...rest } = result;
  const { checklist, earlier } = result.info;
  return {
    ok: true,
    ...rest,
    fileSha256: await sha256Hex(bytes),
    contentSha256: await sha256Hex(new TextEncoder().encode(canonicalText)),
    known: await knownChecklist(checklist),
    earlierKnown: earlier && (await knownChecklist(earlier)),
  };
}

/** A byte order mark stays, so that other bytes are told from the sealed ones. Null for what is not UTF-8. */
function textOf(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}

function refused(sentence: string): FileRecheck {
  return { ok: false, sentence, where: null };
}
