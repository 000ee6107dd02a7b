import { useState } from 'preact/hooks';
import { nameplateChecks } from '../../calc/nameplate-checks.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import { packWords } from '../../text/bench.ts';
import { nameplateWords as say } from '../../text/nameplate.ts';
import { nameplateCheckSentence } from '../../text/nameplate-checks.ts';
import { retestWords } from '../../text/retest.ts';
import { sinceWords } from '../../text/since.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { ChecklistChoice } from '../parts/checklist-choice.tsx';
import { type NameplateBoxes, nameplateBoxes } from '../parts/nameplate-boxes.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';

/** What the maker promises, what it cost, how it came: DESIGN §1, first lines. Every field saves itself. */
export function NameplateScreen({ session }: { session: PackSession }) {
  const [tray, setTray] = useState(false);
  const record = session.record.value;
  const { nameplate } = record;
  const boxes = nameplateBoxes(session);
  const checks = nameplateChecks(nameplate);
  const photos = record.photos.filter(({ zone }) => zone === 'nameplate');

  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button" onClick={() => setTray(true)}>
            {say.photo}
          </button>
          <button type="button" class="button primary" onClick={() => goTo(hrefTo(record.packId, 'arrival'))}>
            {say.goOn}
          </button>
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      {record.retestOf && (
        <p class="notice calm">{retestWords.begunFrom(record.retestOf.label ?? sinceWords.earlierUnnamed)}</p>
      )}
      <ChecklistChoice session={session} />
      <Who boxes={boxes} />
      <Promised boxes={boxes} />
      <Found boxes={boxes} />
      <Bought boxes={boxes} nameplate={nameplate} />
      <RouteChoice session={session} />
      {checks.length > 0 && (
        <section class="notice calm stack" aria-live="polite">
          <h2>{say.checks}</h2>
          <ul class="stack small">
            {checks.map((check) => (
              <li key={check.code}>{nameplateCheckSentence(check, settings.value.units)}</li>
            ))}
          </ul>
          <p class="small muted">{say.noBlock}</p>
        </section>
      )}
      {photos.length > 0 && <Thumbs packId={record.packId} photos={photos} title={say.title} />}
      {tray && (
        <PhotoTray
          session={session}
          zone="nameplate"
          itemId={null}
          what={say.title}
          onAdded={() => setTray(false)}
          onClose={() => setTray(false)}
        />
      )}
    </Screen>
  );
}

function Who({ boxes }: { boxes: NameplateBoxes }) {
  return (
    <section class="stack">
      <h2>{say.groups.who}</h2>
      {boxes.text('name')}
      <div class="pair">
        {boxes.text('sample')}
        {boxes.text('revision')}
      </div>
      <div class="pair">
        {boxes.text('maker')}
        {boxes.text('model')}
      </div>
      <div class="pair">
        {boxes.text('serial')}
        {boxes.text('madeOn')}
      </div>
    </section>
  );
}

function Promised({ boxes }: { boxes: NameplateBoxes }) {
  return (
    <>
      <section class="stack">
        <h2>{say.groups.promised}</h2>
        <div class="pair">
          {boxes.number('nominalVoltageV', 'V')}
          {boxes.number('ratedCapacityAh', 'Ah')}
          {boxes.number('ratedEnergyWh', 'Wh')}
          {boxes.count('cellsInSeries')}
          {boxes.count('stringsInParallel')}
          {boxes.mass('claimedMassKg')}
        </div>
      </section>
      <section class="stack">
        <h2>{say.groups.limits}</h2>
        <div class="pair">
          {boxes.number('continuousCurrentA', 'A')}
          {boxes.number('peakCurrentA', 'A')}
          {boxes.number('peakForS', 's')}
          {boxes.number('chargeCurrentA', 'A')}
          {boxes.number('chargeVoltageV', 'V')}
          {boxes.number('cutOffVoltageV', 'V')}
          {boxes.temperature('chargeLowestDegC')}
          {boxes.temperature('chargeHighestDegC')}
          {boxes.temperature('dischargeLowestDegC')}
          {boxes.temperature('dischargeHighestDegC')}
          {boxes.text('ipCode')}
          {boxes.text('cycleLife')}
          {boxes.text('warranty')}
          {boxes.text('marks')}
        </div>
      </section>
    </>
  );
}

function Found({ boxes }: { boxes: NameplateBoxes }) {
  return (
    <section class="stack">
      <h2>{say.groups.found}</h2>
      <div class="pair">
        {boxes.mass('massKg')}
        {boxes.length('lengthMm')}
        {boxes.length('widthMm')}
        {boxes.length('heightMm')}
      </div>
    </section>
  );
}

function Bought({ boxes, nameplate }: { boxes: NameplateBoxes; nameplate: Nameplate }) {
  const pays = nameplate.paysCommission;
  return (
    <section class="stack">
      <h2>{say.groups.bought}</h2>
      <div class="pair">
        {boxes.number('price', nameplate.currency ?? '', { zeroAllowed: true })}
        {boxes.currency()}
        <DayField
          id="pricedOn"
          label={say.labels.pricedOn}
          value={nameplate.pricedOn ?? ''}
          onChange={(day) => boxes.put('pricedOn', day === '' ? null : day)}
        />
        <DayField
          id="receivedOn"
          label={say.labels.receivedOn}
          value={nameplate.receivedOn ?? ''}
          onChange={(day) => boxes.put('receivedOn', day === '' ? null : day)}
        />
      </div>
      {boxes.text('seller')}
      <ChoiceField
        label={say.labels.obtained}
        choices={(['bought', 'lent', 'supplied', 'found'] as const).map((id) => ({ id, text: say.obtained[id] }))}
        chosen={nameplate.obtained ?? null}
        onChoose={(how) => boxes.put('obtained', how)}
        onClear={() => boxes.put('obtained', null)}
      />
      {boxes.text('obtainedFrom')}
      <ChoiceField
        label={say.labels.paysCommission}
        choices={[
          { id: 'yes', text: say.yes },
          { id: 'no', text: say.no },
        ]}
        chosen={pays === undefined ? null : pays ? 'yes' : 'no'}
        onChoose={(id) => boxes.put('paysCommission', id === 'yes')}
        onClear={() => boxes.put('paysCommission', null)}
      />
      {boxes.text('note', { lines: 'many' })}
    </section>
  );
}

function RouteChoice({ session }: { session: PackSession }) {
  const { items } = session.definition.definition;
  const short = items.filter(({ route }) => route === 'short').length;
  return (
    <ChoiceField
      label={packWords.route}
      choices={[
        { id: 'whole', text: packWords.wholeRoute(items.length) },
        { id: 'short', text: packWords.shortRoute(short) },
      ]}
      chosen={session.record.value.route}
      onChoose={(route) =>
        void session.put({ puts: [{ subject: 'pack', part: 'route', v: route }], undoLabel: packWords.route })
      }
    />
  );
}
