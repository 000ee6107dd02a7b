import { useState } from 'preact/hooks';
import { dropShared, type SharedFile, sharedFile } from '../../storage/shared-in.ts';
import { photoProblemSentence } from '../../text/photos.ts';
import { trayWords as say } from '../../text/tray.ts';
import { words, writeProblems } from '../../text/words.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { addPhoto, takingIn } from '../photos/add-photo.ts';
import { zoneChoices } from '../photos/zone-choices.ts';
import { cards } from '../state/bench.ts';
import { opened, openPack } from '../state/open-pack.ts';
import type { PackSession } from '../state/pack-session.ts';
import { lookInTray } from './waiting.ts';

const NONE = 'none';

interface PutIntoPackProps {
  files: readonly SharedFile[];
  onSaid: (sentences: string[]) => void;
}

/** Pack, place and item for the ticked photos. Each leaves the tray only once it is saved in the pack. */
export function PutIntoPack({ files, onSaid }: PutIntoPackProps) {
  const here = cards.value.filter(({ gone }) => !gone);
  const now = opened.value;
  const session = now.state === 'open' && here.some(({ packId }) => packId === now.session.packId) ? now.session : null;
  const [wrong, setWrong] = useState<string | null>(null);
  if (here.length === 0) {
    return (
      <>
        <p class="notice calm">{say.noPack}</p>
        <a class="button" href="#/">
          {say.toBench}
        </a>
      </>
    );
  }
  async function choose(packId: string) {
    setWrong(null);
    await openPack(packId);
    if (opened.value.state === 'noDefinition') setWrong(say.notOpened);
  }
  const choices = here.map((card) => ({ id: card.packId, text: words.packLabel(card.name, card.sample) }));
  return (
    <section class="stack">
      <SelectField
        id="tray-pack"
        label={say.pack}
        choices={session ? choices : [{ id: NONE, text: '…' }, ...choices]}
        chosen={session?.packId ?? NONE}
        onChoose={(packId) => void choose(packId)}
      />
      {wrong && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      {session && <Place key={session.packId} session={session} files={files} onSaid={onSaid} />}
    </section>
  );
}

function Place({ session, files, onSaid }: PutIntoPackProps & { session: PackSession }) {
  const { definition } = session.definition;
  const zones = zoneChoices(definition);
  const [zone, setZone] = useState(zones[0]?.id ?? '');
  const [itemId, setItemId] = useState(NONE);
  // A place outside the zones is a state of the pack as well, or shows no item.
  const items = definition.items.filter((item) => item.zone === zone || item.state === zone);
  const isBusy = takingIn.value !== null;

  async function put() {
    const wrong: string[] = [];
    let doneCount = 0;
    let thereCount = 0;
    for (const { id } of files) {
      const file = await sharedFile(id);
      if (file === null) continue;
      const added = await addPhoto(session, file, { zone, itemId: itemId === NONE ? null : itemId, detail: false });
      if (added.ok) {
        await dropShared(id);
        doneCount++;
        if (added.wasThere) thereCount++;
      } else if (added.problem === 'notSaved') {
        const { saving } = session;
        wrong.push(writeProblems[saving.value.now === 'notSaved' ? saving.value.problem : 'failed']);
        break;
      } else if (added.problem === 'dropped' || added.problem === 'cancelled') break;
      else wrong.push(photoProblemSentence(added.problem, added.fileName));
    }
    await lookInTray();
    const { name = '', sample = '' } = session.record.value.nameplate;
    onSaid([
      ...(doneCount === 0 ? [] : [say.putDone(doneCount, words.packLabel(name, sample))]),
      ...(thereCount === 0 ? [] : [say.wasThere(thereCount)]),
      ...wrong,
    ]);
  }

  return (
    <>
      <SelectField
        id="tray-zone"
        label={say.zone}
        choices={zones}
        chosen={zone}
        onChoose={(id) => {
          setZone(id);
          setItemId(NONE);
        }}
      />
      {items.length > 0 && (
        <SelectField
          id="tray-item"
          label={say.item}
          choices={[{ id: NONE, text: say.noItem }, ...items.map(({ id, title }) => ({ id, text: title }))]}
          chosen={itemId}
          onChoose={setItemId}
        />
      )}
      <button type="button" class="button primary" disabled={files.length === 0 || isBusy} onClick={() => void put()}>
        {say.put(files.length)}
      </button>
    </>
  );
}
