import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { RecordPhoto } from '../../record/pack-record.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';
import { calloutWords } from '../../text/callouts.ts';
import { photoWords as say } from '../../text/photo-screens.ts';
import { words } from '../../text/words.ts';
import type { CalloutEditorProps } from '../../ui/callouts/callout-editor.tsx';
import type { EditedCallout } from '../../ui/callouts/editing.ts';
import { SavedMark } from '../../ui/saved-mark.tsx';
import { Screen } from '../../ui/screen.tsx';
import { NotSaved } from '../parts/not-saved.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { usePhotoUrl } from './use-photo-url.ts';

interface DrawOnPhotoProps {
  session: PackSession;
  photo: RecordPhoto;
  itemId: string | null;
  onDone: () => void;
}

/** The callout editor over the stored photo; every change is written at once. */
export function DrawOnPhoto({ session, photo, itemId, onDone }: DrawOnPhotoProps) {
  const url = usePhotoUrl(photo.id, 'photos');
  const [editor, setEditor] = useState<{ Editor: ComponentType<CalloutEditorProps> } | null>(null);
  useEffect(() => {
    void import('../../ui/callouts/callout-editor.tsx').then(({ CalloutEditor }) =>
      setEditor({ Editor: CalloutEditor }),
    );
  }, []);
  const record = session.record.value;
  if (!editor || url === null) {
    return (
      <Screen title={say.calloutsFor} back={{ href: hrefTo(record.packId, 'photos'), label: say.photosOf }}>
        <p class="muted">{editor ? say.notHere : words.opening}</p>
      </Screen>
    );
  }

  function put({ id, made, photoId, kind, points, text, itemId: shows }: EditedCallout) {
    const stored = photo.callouts.find((callout) => callout.id === id);
    const { id: _id, number: _number, text: _text, itemId: _itemId, ...rest } = stored ?? { id, number: null };
    const v = {
      ...rest,
      photoId,
      kind,
      points,
      made: made ?? null,
      ...(text !== undefined && text !== '' && { text }),
      ...(shows !== undefined && { itemId: shows }),
    };
    const puts: Put[] = [{ subject: 'callout', part: id, v }];
    const linked =
      shows === undefined ||
      session.record.value.photos.some((one) => one.id === photoId && one.itemIds.includes(shows));
    if (!linked) puts.push({ subject: 'photoItem', part: `${photoId}/${shows}`, v: true });
    void session.put({ puts, undoLabel: calloutWords.kinds[kind] });
  }
  const { Editor } = editor;
  return (
    <Editor
      photoId={photo.id}
      photoUrl={url}
      widthPx={photo.widthPx}
      heightPx={photo.heightPx}
      callouts={photo.callouts}
      items={askedItems(session, photo)}
      itemId={itemId}
      newId={randomId}
      onPut={put}
      onRemove={(id) =>
        void session.put({ puts: [{ subject: 'callout', part: id, gone: true }], undoLabel: say.calloutsFor })
      }
      onDone={onDone}
    >
      <SmokeHelp record={record} />
      <SavedMark now={session.saving.value.now} />
      <NotSaved session={session} />
    </Editor>
  );
}

/** Items a callout may show: those of the photo's zone first. */
function askedItems(session: PackSession, photo: RecordPhoto) {
  const asked = new Set(session.grading.value.items.filter((result) => result.asked).map(({ itemId }) => itemId));
  const items = session.definition.definition.items.filter(({ id }) => asked.has(id));
  const results = new Map(session.grading.value.items.map((result) => [result.itemId, result]));
  return [...items.filter(({ zone }) => zone === photo.zone), ...items.filter(({ zone }) => zone !== photo.zone)].map(
    ({ id, title }) => ({ id, title, outcome: results.get(id)?.grade ?? ('notSeen' as const) }),
  );
}
