import { rulerResults } from '../../../grading/live-tests/ruler-results.ts';
import type { RecordPhoto } from '../../../record/pack-record.ts';
import type { Named } from '../../../schema/live-tests/live-tests.ts';
import { type Ruler, rulerSchema } from '../../../schema/live-tests/ruler.ts';
import { rulerBlocks } from '../../../sheet/model/live-tests/ruler-blocks.ts';
import { editingWords } from '../../../text/live-tests/editing.ts';
import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { NumberField } from '../../../ui/fields/number-field.tsx';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { Screen } from '../../../ui/screen.tsx';
import { limitProblem } from '../../parts/limit-problem.ts';
import { SavedLine } from '../../parts/saved-line.tsx';
import { notNegative, shownLength } from '../../parts/shown-number.ts';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { usePhotoUrl } from '../../photos/use-photo-url.ts';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { ResultView } from '../result-view.tsx';
import { contextOf } from '../test-context.ts';
import { PhotoRulers } from './photo-rulers.tsx';
import { fieldPut } from './ruler-state.ts';
import { distanceWords } from './ruler-words.ts';
import { UseForLead } from './use-for-lead.tsx';
import '../codes/codes.css';

interface RulerScreenProps {
  session: PackSession;
  ruler: Named<Ruler>;
  photo: RecordPhoto;
  onMove: () => void;
}

/** One distance: over its photo, how sure it is, and the way to a lead. */
export function RulerScreen({ session, ruler, photo, onMove }: RulerScreenProps) {
  const url = usePhotoUrl(photo.id, 'photos');
  const record = session.record.value;
  const { packId } = record;
  const context = { ...contextOf(record), photos: record.photos };
  const distance = rulerResults(record).find((one) => one.ruler.id === ruler.id)?.distance ?? null;
  const listHref = hrefTo(packId, 'live-test', 'ruler');
  const number = record.tests.rulers.findIndex(({ id }) => id === ruler.id) + 1;
  const shown = shownLength(context.units);

  function change(key: 'label' | 'offPlaneMm' | 'cameraMm', value: string | number | null) {
    const before = session.record.value.tests.rulers.find(({ id }) => id === ruler.id) ?? ruler;
    const undoLabel = editingWords.changed(say.one, say.labels[key]);
    void session.put({ puts: [fieldPut(before, key, value)], undoLabel });
  }
  async function remove() {
    const undoLabel = editingWords.deleted(say.one);
    await session.put({ puts: [{ subject: 'ruler', part: ruler.id, gone: true }], undoLabel });
    goTo(listHref, { replace: true });
  }
  const lengthBox = (key: 'offPlaneMm' | 'cameraMm', check: (value: number) => string | null) => {
    const stored = ruler[key];
    return (
      <NumberField
        id={`ruler-${key}`}
        owner={`${packId}/${ruler.id}`}
        label={say.labels[key]}
        unit={shown.unit}
        significantDigits={6}
        value={stored === undefined ? null : (shown.toShown?.(stored) ?? stored)}
        check={(typed) => check(typed) ?? limitProblem(rulerSchema.entries[key], typed, shown)}
        onChange={(typed) => change(key, typed === null ? null : (shown.toStored?.(typed) ?? typed))}
      />
    );
  };
  return (
    <Screen
      title={editingWords.numbered(say.one, number)}
      back={{ href: listHref, label: say.title }}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => void remove()}>
            {editingWords.delete}
          </button>
          <button type="button" class="button" onClick={onMove}>
            {say.movePoints}
          </button>
          <a class="button primary" href={listHref}>
            {editingWords.done}
          </a>
        </>
      }
    >
      <div class="photo-with-marks" style={{ aspectRatio: `${photo.widthPx} / ${photo.heightPx}` }}>
        {url && (
          <img
            src={url}
            alt={say.alt(distanceWords(distance, context.units))}
            width={photo.widthPx}
            height={photo.heightPx}
          />
        )}
        <PhotoRulers record={record} photo={photo} only={ruler.id} />
      </div>
      <section class="stack">
        <p class="ruler-distance">
          <strong>{distanceWords(distance, context.units)}</strong>
        </p>
        {lengthBox('offPlaneMm', notNegative)}
        <p class="small muted">{say.offPlaneLead}</p>
        {lengthBox('cameraMm', shown.check)}
        <p class="small muted">{say.cameraLead}</p>
        <TextField
          id="ruler-label"
          label={say.labels.label}
          value={ruler.label ?? ''}
          onChange={(label) => change('label', label)}
        />
      </section>
      {distance && <UseForLead session={session} rulerId={ruler.id} distance={distance} />}
      <ResultView blocks={rulerBlocks(context, ruler.id)} />
      <a class="button" href={hrefTo(packId, 'photo', photo.id)}>
        {say.openPhoto}
      </a>
    </Screen>
  );
}
