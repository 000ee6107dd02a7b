import { useState } from 'preact/hooks';
import { calloutMarks } from '../../drawing/callouts.ts';
import type { RecordPhoto } from '../../record/pack-record.ts';
import type { Put } from '../../storage/store.ts';
import { formatTakenAt } from '../../text/format-day.ts';
import { photoWords as say } from '../../text/photo-screens.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { DrawingView } from '../../ui/drawing-view.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { PhotoRulers, PhotoTools } from '../live-tests/ruler/photo-rulers.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { VoicePart } from '../voice/voice-part.tsx';
import { usePhotoUrl } from './use-photo-url.ts';
import { zoneChoices } from './zone-choices.ts';

/** What is known and said about a photo: where it belongs, what it shows, its caption. */
export function AboutPhoto({
  session,
  photo,
  onDraw,
}: {
  session: PackSession;
  photo: RecordPhoto;
  onDraw: () => void;
}) {
  const [removing, setRemoving] = useState(false);
  const url = usePhotoUrl(photo.id, 'photos');
  const { packId } = session;
  const { definition } = session.definition;
  const { id, callouts, itemIds, ...stored } = photo;
  const shown = definition.items.filter((item) => itemIds.includes(item.id));
  const others = definition.items.filter((item) => !itemIds.includes(item.id));
  const first = shown[0];
  const restsOnIt = session.record.value.makeSafe.some((passage) => passage.coveredTerminalsPhoto === id);
  const numbered = callouts.filter(({ number }) => number !== null);
  const linked = [
    ...others.filter(({ zone }) => zone === photo.zone),
    ...others.filter(({ zone }) => zone !== photo.zone),
  ];

  const change = (v: object, label: string) =>
    void session.put({ puts: [{ subject: 'photo', part: id, v: { ...stored, ...v } }], undoLabel: label });
  function link(itemId: string, on: boolean) {
    const part = `${id}/${itemId}`;
    const put: Put = on ? { subject: 'photoItem', part, v: true } : { subject: 'photoItem', part, gone: true };
    void session.put({ puts: [put], undoLabel: say.linkItem });
  }
  async function remove() {
    const puts: Put[] = [
      { subject: 'photo', part: id, gone: true },
      ...itemIds.map((itemId): Put => ({ subject: 'photoItem', part: `${id}/${itemId}`, gone: true })),
      ...callouts.map((callout): Put => ({ subject: 'callout', part: callout.id, gone: true })),
      ...session.record.value.tests.rulers
        .filter(({ photoId }) => photoId === id)
        .map((ruler): Put => ({ subject: 'ruler', part: ruler.id, gone: true })),
    ];
    setRemoving(false);
    await session.put({ puts, undoLabel: say.remove });
    goTo(hrefTo(packId, 'photos'), { replace: true });
  }

  return (
    <Screen
      title={say.about}
      back={{ href: hrefTo(packId, 'photos'), label: say.photosOf }}
      middle={<SmokeHelp record={session.record.value} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={onDraw}>
            {say.edit}
          </button>
          {first && (
            <a class="button primary" href={hrefTo(packId, 'item', first.id)}>
              {say.toItem(first.title)}
            </a>
          )}
        </>
      }
    >
      <button
        type="button"
        class="about-photo"
        style={{ aspectRatio: `${photo.widthPx} / ${photo.heightPx}` }}
        onClick={onDraw}
      >
        {url && (
          <img
            src={url}
            alt={say.alt(photo.caption ?? first?.title ?? '')}
            width={photo.widthPx}
            height={photo.heightPx}
          />
        )}
        <DrawingView drawing={calloutMarks({ callouts, widthPx: photo.widthPx, heightPx: photo.heightPx })} />
        <PhotoRulers record={session.record.value} photo={photo} />
      </button>
      {numbered.length > 0 && (
        <ol class="small" aria-label={say.legend}>
          {numbered.map(({ id: calloutId, number, text, itemId }) => (
            <li key={calloutId}>
              <strong>{number}</strong> {text ?? definition.items.find((item) => item.id === itemId)?.title ?? '–'}
            </li>
          ))}
        </ol>
      )}
      <VoicePart session={session} on={{ kind: 'photo', id }} />
      <PhotoTools record={session.record.value} photo={photo} />
      <ChoiceField
        label={say.zone}
        choices={zoneChoices(definition)}
        chosen={photo.zone}
        onChoose={(zone) => change({ zone }, say.zone)}
      />
      <section class="stack">
        <h2>{say.shows}</h2>
        {shown.length === 0 && <p class="muted small">{say.showsNothing}</p>}
        <ul class="lines">
          {shown.map((item) => (
            <li key={item.id} class="linked">
              <a class="line" href={hrefTo(packId, 'item', item.id)}>
                <span />
                <span class="title">{item.title}</span>
                <span />
              </a>
              <button
                type="button"
                class="button quiet"
                aria-label={say.unlink(item.title)}
                onClick={() => link(item.id, false)}
              >
                ×
              </button>
            </li>
          ))}
        </ul>
        <div class="field">
          <label for="link-item">{say.linkItem}</label>
          <div class="box">
            <select
              id="link-item"
              value=""
              onChange={(event) => {
                if (event.currentTarget.value !== '') link(event.currentTarget.value, true);
                event.currentTarget.value = '';
              }}
            >
              <option value="">{say.chooseItem}</option>
              {linked.map((item) => (
                <option key={item.id} value={item.id}>
                  {item.title}
                </option>
              ))}
            </select>
          </div>
        </div>
      </section>
      <TextField
        id="caption"
        label={say.caption}
        value={photo.caption ?? ''}
        onChange={(caption) => change({ caption: caption === '' ? undefined : caption }, say.caption)}
      />
      <div class="small muted">
        <p>{photo.takenAt === undefined ? say.takenUnknown : say.takenAt(formatTakenAt(photo.takenAt))}</p>
        <p>{say.size(photo.widthPx, photo.heightPx)}</p>
        <p class="hash">{say.originalHash(photo.originalSha256)}</p>
      </div>
      {restsOnIt ? (
        <p class="small muted">{say.restsOnIt}</p>
      ) : (
        <button type="button" class="button quiet" onClick={() => setRemoving(true)}>
          {say.remove}
        </button>
      )}
      {removing && (
        <Dialog title={say.remove} onClose={() => setRemoving(false)}>
          <p>{say.removeAsk}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setRemoving(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={() => void remove()}>
              {say.removeNow}
            </button>
          </div>
        </Dialog>
      )}
    </Screen>
  );
}
