import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import { gradeRecord } from '../../grading/grade-record.ts';
import { makeSheet } from '../../sheet/model/make-sheet.ts';
import type { SheetPhoto } from '../../sheet/model/sheet.ts';
import { sheetScreenWords as say } from '../../text/sheet-screen.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetPhotoFigure } from '../../ui/sheet/sheet-photo-figure.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { APP_VERSION } from '../app-version.ts';
import { backToPack } from '../back-to-pack.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { usePhotoUrl } from '../photos/use-photo-url.ts';
import { useSince } from '../since/use-since.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';
import { PdfActions } from './pdf-actions.tsx';

/** The sheet of the open pack on screen, with the ways to take it away under the thumb. */
export function SheetPage({ session }: { session: PackSession }) {
  const record = session.record.value;
  const since = useSince(session);
  const sheet = makeSheet({
    definition: session.definition.definition,
    definitionSha256: session.definition.sha256,
    record,
    grading: session.grading.value,
    earlier: session.earlier && {
      definition: session.earlier.definition,
      grading: gradeRecord(session.earlier.definition, record),
    },
    since: since === 'reading' ? null : since,
    appVersion: APP_VERSION,
    units: settings.value.units,
    locale: 'en',
    utcOffsetMinutes: utcOffsetMinutes(nowMs.peek()),
  });
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      end={record.demo && <span class="mark">{words.inventedDemo}</span>}
      dockClass="two-rows"
      dock={<PdfActions sheet={sheet} packId={session.packId} />}
    >
      <SheetView sheet={sheet} photo={(photo) => <PhotoOnSheet key={photo.photoId} photo={photo} />} />
    </Screen>
  );
}

function PhotoOnSheet({ photo }: { photo: SheetPhoto }) {
  return <SheetPhotoFigure photo={photo} url={usePhotoUrl(photo.photoId, 'photos')} />;
}
