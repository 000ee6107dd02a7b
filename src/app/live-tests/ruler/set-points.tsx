import type { RecordPhoto } from '../../../record/pack-record.ts';
import type { ImagePoint } from '../../../schema/callout.ts';
import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { words } from '../../../text/words.ts';
import { RulerEditor } from '../../../ui/ruler/ruler-editor.tsx';
import { SavedMark } from '../../../ui/saved-mark.tsx';
import { Screen } from '../../../ui/screen.tsx';
import { NotSaved } from '../../parts/not-saved.tsx';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { usePhotoUrl } from '../../photos/use-photo-url.ts';
import { hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { settings } from '../../state/settings.ts';
import { otherSideLong } from './card-corners.ts';
import { distanceWhileSet } from './ruler-words.ts';

interface SetPointsProps {
  session: PackSession;
  photo: RecordPhoto;
  points: readonly ImagePoint[];
  onPoints: (points: ImagePoint[]) => void;
  onDone: () => void;
}

/** The ruler's points on the stored photo; every change is written at once. */
export function SetPoints({ session, photo, points, onPoints, onDone }: SetPointsProps) {
  const url = usePhotoUrl(photo.id, 'photos');
  const record = session.record.value;
  if (url === null) {
    return (
      <Screen title={say.title} back={{ href: hrefTo(record.packId, 'live-test', 'ruler'), label: say.title }}>
        <p class="muted">{words.opening}</p>
      </Screen>
    );
  }
  return (
    <RulerEditor
      photoUrl={url}
      widthPx={photo.widthPx}
      heightPx={photo.heightPx}
      points={points}
      result={distanceWhileSet(points, photo, settings.value.units)}
      onPoints={onPoints}
      onTurn={() => onPoints([...otherSideLong(points.slice(0, 4)), ...points.slice(4)])}
      onDone={onDone}
    >
      <SmokeHelp record={record} />
      <SavedMark now={session.saving.value.now} />
      <NotSaved session={session} />
    </RulerEditor>
  );
}
