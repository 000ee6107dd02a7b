import { cellMarkBlocks } from '../../../sheet/model/live-tests/cell-mark-blocks.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';
import { editingWords } from '../../../text/live-tests/editing.ts';
import { NumberField } from '../../../ui/fields/number-field.tsx';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { Screen } from '../../../ui/screen.tsx';
import { SavedLine } from '../../parts/saved-line.tsx';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { ChoosePhoto } from '../../photos/choose-photo.tsx';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { Cautions } from '../cautions.tsx';
import { cellCodeKind } from '../kinds/cell-code.ts';
import { ResultView } from '../result-view.tsx';
import { contextOf } from '../test-context.ts';
import { keepUnfinished, unfinishedTests } from '../unfinished.ts';
import { zoneRead } from '../zone-read.ts';
import { CodeBox } from './code-box.tsx';
import { CodeStrip } from './code-strip.tsx';
import { CodesOnPhoto } from './codes-on-photo.tsx';
import { markPut } from './mark-put.ts';
import './codes.css';

/** A code is on a cell: its photo goes where the cells are read. */
const READS = ['lowestCell', 'cellVoltages', 'cellSpread', 'cellResistances'] as const;

/** One code: typed, or found on a photo; what it says is shown as it is typed. */
export function CodeScreen({ session, id }: { session: PackSession; id: string }) {
  const record = session.record.value;
  const { packId } = record;
  const place = { packId, kindId: cellCodeKind.id, id };
  const markOf = () => session.record.value.tests.cellMarks.find((one) => one.id === id);
  const mark = markOf();
  const chosenId = unfinishedTests(packId, cellCodeKind.id).value[id]?.photoId;
  const photo = record.photos.find((one) => one.id === (mark?.photoId ?? chosenId));
  const listHref = hrefTo(packId, 'live-test', cellCodeKind.id);
  const number = record.tests.cellMarks.findIndex((one) => one.id === id) + 1;
  const zone = zoneRead(session.definition.definition, READS);

  function change(key: 'text' | 'cellNumber' | 'note', value: string | number | null) {
    keepUnfinished(place, null);
    void session.put({ puts: [markPut(id, markOf(), { key, value })], undoLabel: say.undo(say.labels[key]) });
  }
  async function remove() {
    keepUnfinished(place, null);
    if (mark) {
      const undoLabel = editingWords.deleted(say.one);
      await session.put({ puts: [{ subject: 'cellMark', part: id, gone: true }], undoLabel });
    }
    goTo(listHref, { replace: true });
  }
  return (
    <Screen
      title={number > 0 ? editingWords.numbered(say.one, number) : editingWords.newOne(say.one)}
      back={{ href: listHref, label: say.title }}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          {mark && (
            <button type="button" class="button" onClick={() => void remove()}>
              {editingWords.delete}
            </button>
          )}
          <button
            type="button"
            class="button primary"
            onClick={() => {
              keepUnfinished(place, null);
              goTo(listHref);
            }}
          >
            {editingWords.done}
          </button>
        </>
      }
    >
      {!mark && <Cautions lines={say.cautions} open={record.tests.cellMarks.length === 0} />}
      {!mark && photo ? (
        <CodesOnPhoto session={session} photo={photo} onOther={() => keepUnfinished(place, null)} />
      ) : (
        <>
          <section class="stack">
            <CodeBox
              owner={`${packId}/${id}`}
              value={mark?.text ?? ''}
              onChange={(text) => text !== '' && change('text', text)}
            />
            <p class="small muted">{say.textHint}</p>
            {mark && <CodeStrip text={mark.text} />}
          </section>
          {mark ? (
            <section class="stack">
              <NumberField
                id="code-cell"
                owner={`${packId}/${id}`}
                label={say.labels.cellNumber}
                unit=""
                whole
                value={mark.cellNumber ?? null}
                check={(value) => (value >= 1 && value <= 1000 ? null : say.wholeCell)}
                onChange={(value) => change('cellNumber', value)}
              />
              <TextField
                id="code-note"
                label={say.labels.note}
                value={mark.note ?? ''}
                maxLength={2000}
                lines="many"
                onChange={(note) => change('note', note)}
              />
              {photo && (
                <a class="button" href={hrefTo(packId, 'photo', photo.id)}>
                  {say.fromPhoto}
                </a>
              )}
            </section>
          ) : (
            <section class="stack">
              <h2>{say.orPhoto}</h2>
              <p class="small muted">{say.orPhotoLead}</p>
              <ChoosePhoto
                session={session}
                zone={zone}
                what={say.photoFor}
                onChoose={(photoId) => keepUnfinished(place, { photoId })}
              />
            </section>
          )}
          {mark && <ResultView blocks={cellMarkBlocks(contextOf(record), id)} />}
        </>
      )}
    </Screen>
  );
}
