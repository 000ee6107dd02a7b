import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import '../closing/closing.css';
import { makeSheet } from '../../sheet/model/make-sheet.ts';
import type { SheetPhoto } from '../../sheet/model/sheet.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { sheetScreenWords as say } from '../../text/sheet-screen.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetPhotoFigure } from '../../ui/sheet/sheet-photo-figure.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { backToPack } from '../back-to-pack.ts';
import { AttachmentsPart } from '../closing/attachments-part.tsx';
import { useComeIn } from '../closing/come-in.ts';
import { RevisionsPart } from '../closing/revisions-part.tsx';
import { useSealedSheet } from '../closing/sealed-content.ts';
import { StandingPart } from '../closing/standing-part.tsx';
import { usePhotoUrl } from '../photos/use-photo-url.ts';
import { hrefTo } from '../route.ts';
import { useSince } from '../since/use-since.ts';
import type { PackSession } from '../state/pack-session.ts';
import { PdfActions } from './pdf-actions.tsx';
import { openSheetInput, sealedSheetInput } from './sheet-input.ts';

/**
 * The sheet of the open pack on screen, with the ways to take it away under the thumb. A closed one is made of what was
 * sealed; `id` names an older revision by the SHA-256 of its JSON.
 */
export function SheetPage({ session, id }: { session: PackSession; id: string }) {
  const record = session.record.value;
  const since = useSince(session);
  const { closings, sheet: standing } = record;
  const wanted = closings.some(({ sha256 }) => sha256 === id) ? id : standing.now === 'closed' ? standing.sha256 : null;
  const read = useSealedSheet(wanted);
  const comeIn = useComeIn(session);
  const frame = {
    title: say.title,
    back: backToPack(record),
    end: record.demo && <span class="mark">{words.inventedDemo}</span>,
  };
  if (read === 'reading' || (read !== null && comeIn === undefined)) {
    return (
      <Screen {...frame}>
        <p role="status">{closingWords.reading}</p>
      </Screen>
    );
  }
  const sheet = makeSheet(
    read?.state === 'here'
      ? sealedSheetInput(read, { record, sinceClosing: comeIn?.count ?? 0 })
      : openSheetInput(session, {
          since: since === 'reading' ? null : since,
          isAsSealed: standing.now !== 'closed' || comeIn === null,
        }),
  );
  const revision = read?.state === 'here' ? read.content.sealed.revision : null;
  return (
    <Screen
      {...frame}
      dockClass="two-rows"
      dock={
        <PdfActions key={wanted} sheet={sheet} revision={revision}>
          <a class="button" href={hrefTo(session.packId, 'afterwards')}>
            {say.afterwards}
          </a>
        </PdfActions>
      }
    >
      <StandingPart
        session={session}
        title={sheet.title}
        comeIn={comeIn ?? null}
        shown={wanted === null || read === null ? null : { sha256: wanted, sealed: read }}
      />
      <SheetView sheet={sheet} photo={(photo) => <PhotoOnSheet key={photo.photoId} photo={photo} />} />
      {standing.now === 'closed' && wanted === standing.sha256 && <AttachmentsPart session={session} to={wanted} />}
      <RevisionsPart session={session} shown={wanted} />
    </Screen>
  );
}

function PhotoOnSheet({ photo }: { photo: SheetPhoto }) {
  return <SheetPhotoFigure photo={photo} url={usePhotoUrl(photo.photoId, 'photos')} />;
}
