import { hiddenCharacterName } from '../../text/bundle.ts';
import { formatDay, localDay } from '../../text/format-day.ts';
import { keepWords as say } from '../../text/keep.ts';
import { writeProblems } from '../../text/words.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { PackOutcome, Restored } from './restore-files.ts';

/** Names listed at once. Our choice: two screens of a phone; the rest is counted. */
const MAX_LISTED = 30;

interface RestoredProps {
  restored: Restored;
  busy: boolean;
  onBringBack(): void;
}

/** What a restore did: pack by pack, then what it asks about and what it had to change. */
export function RestoredPart({ restored, busy, onBringBack }: RestoredProps) {
  const { files, packs, stopped, skippedCount, deleted, cleaned, ahead } = restored;
  const backCount = packs.reduce((sum, { broughtBack }) => sum + broughtBack.length, 0);
  return (
    <div class="notice calm stack" role="status">
      {files.map((fileName) => (
        <p key={fileName}>{say.restored(fileName)}</p>
      ))}
      {backCount > 0
        ? [<p key="back">{say.broughtBack(backCount)}</p>]
        : packs.map((pack) => <p key={pack.packId}>{packLine(pack)}</p>)}
      {stopped && <p>{say.stoppedAt(stopped.label, stopReason(stopped.problem))}</p>}
      {packs.flatMap(({ packId, label, missing }) =>
        Object.values(missing).some((count) => count > 0)
          ? [<p key={packId}>{say.packMissing(label, missing)}</p>]
          : [],
      )}
      {skippedCount > 0 && <p class="small">{say.skipped(skippedCount)}</p>}
      {ahead.map(({ fileName, atMs }) => (
        <p key={fileName}>{say.ahead(fileName, formatDay(localDay(atMs, utcOffsetMinutes(atMs))))}</p>
      ))}
      {cleaned.length > 0 && (
        <>
          <p>{say.cleaned(cleaned.length)}</p>
          <Listed
            lines={cleaned.map(({ name, place, characters }) =>
              say.cleanedLine(name, place, characters.map(hiddenCharacterName).join(', ')),
            )}
          />
        </>
      )}
      {deleted.length > 0 && (
        <>
          <p>{say.deletedHere(deleted.length)}</p>
          <Listed lines={deleted} />
          <button type="button" class="button" disabled={busy} onClick={onBringBack}>
            {say.bringBack}
          </button>
        </>
      )}
    </div>
  );
}

function Listed({ lines }: { lines: readonly string[] }) {
  const more = lines.length - MAX_LISTED;
  return (
    <ul class="small">
      {lines.slice(0, MAX_LISTED).map((line) => (
        <li key={line}>{line}</li>
      ))}
      {more > 0 && <li>{say.moreOfThem(more)}</li>}
    </ul>
  );
}

function packLine({ label, added, written, newerHere }: PackOutcome): string {
  if (added) return say.packAdded(label);
  if (written.length > 0) return say.packMerged(label, written.length, newerHere.length);
  return newerHere.length > 0 ? say.packNewerHere(label, newerHere.length) : say.packSame(label);
}

function stopReason(problem: NonNullable<Restored['stopped']>['problem']): string {
  if (problem === 'byHand') return say.stoppedByHand;
  return problem === 'fileChanged' ? say.fileChanged : writeProblems[problem];
}
