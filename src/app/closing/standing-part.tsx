import { useState } from 'preact/hooks';
import { nextRevision } from '../../record/fold-closings.ts';
import { hashGroups, closingWords as say } from '../../text/closing-screens.ts';
import { formatMoment } from '../../text/format-day.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { CloseDialog } from './close-dialog.tsx';
import type { ComeIn } from './come-in.ts';
import { ComeInNotice } from './come-in-notice.tsx';
import { JsonActions } from './json-actions.tsx';
import type { SealedRead } from './sealed-content.ts';

interface StandingPartProps {
  session: PackSession;
  /** What is looked at: a revision, or the record as it stands. */
  shown: { sha256: string; sealed: SealedRead } | null;
  title: string;
  comeIn: ComeIn | null;
}

/** Over the sheet, which says itself how it stands: SHA-256 and JSON of a closed one, the way to close another. */
export function StandingPart({ session, shown, title, comeIn }: StandingPartProps) {
  const [asking, setAsking] = useState(false);
  const record = session.record.value;
  const { closings, sheet } = record;
  const closing = closings.find(({ sha256 }) => sha256 === shown?.sha256);
  const newest = closings.at(-1);
  if (shown === null || closing === undefined) {
    const next = nextRevision(record);
    return (
      <section class="stack" data-standing={sheet.now}>
        <button type="button" class="button" onClick={() => setAsking(true)}>
          {next === 1 ? say.close : say.closeNext(next)}
        </button>
        {asking && <CloseDialog session={session} onClose={() => setAsking(false)} />}
      </section>
    );
  }
  const isNewest = closing === newest;
  const { revision, closedAtMs } = closing;
  return (
    <section class="stack" data-standing="closed">
      <p>
        <strong>{say.closedOn(revision, formatMoment(closedAtMs, utcOffsetMinutes(closedAtMs)))}</strong>
      </p>
      {!isNewest && newest && (
        <a class="button" href={hrefTo(session.packId, 'sheet')}>
          {say.toNewest(newest.revision)}
        </a>
      )}
      {isNewest && sheet.now === 'revising' && (
        <a class="button" href={hrefTo(session.packId, 'sheet')}>
          {say.toNewest(nextRevision(record))}
        </a>
      )}
      {isNewest && comeIn && <ComeInNotice session={session} comeIn={comeIn} />}
      <p class="small muted">{say.hash}</p>
      <p class="hash-groups">
        {hashGroups(closing.sha256).map((group, place) => (
          <span key={place}>{group} </span>
        ))}
      </p>
      {shown.sealed.state === 'here' ? (
        <JsonActions sealed={shown.sealed} title={title} />
      ) : (
        <p class="notice small" role="alert">
          {shown.sealed.state === 'absent' ? say.jsonNotHere : say.jsonDamaged} {say.meanwhile}
        </p>
      )}
    </section>
  );
}
