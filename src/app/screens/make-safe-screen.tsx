import { useEffect, useState } from 'preact/hooks';
import type { PackRecord } from '../../record/pack-record.ts';
import { randomId } from '../../storage/open-store.ts';
import { formatClock, formatMoment, localDay } from '../../text/format-day.ts';
import { formatValue } from '../../text/format-unit.ts';
import { ABOVE_50_V, CAUTIONS, makeSafeWords as say } from '../../text/make-safe.ts';
import { words } from '../../text/words.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { NumberField } from '../../ui/fields/number-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { GUARDED_FROM_V, type MakeSafeDraft, missingForMakeSafe } from '../make-safe-draft.ts';
import { makeSafeGate } from '../make-safe-gate.ts';
import { NotSaved } from '../parts/not-saved.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { Thumbs } from '../parts/thumbs.tsx';
import { PhotoTray } from '../photos/photo-tray.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { useKeptDraft } from '../state/use-kept-draft.ts';

/** The gate before the lid comes off. What is ticked and typed survives a dropped page until it is passed. */
export function MakeSafeScreen({ session }: { session: PackSession }) {
  const [tray, setTray] = useState(false);
  const [asked, setAsked] = useState(false);
  const record = session.record.value;
  const atMs = nowMs.value;
  const gate = makeSafeGate(record, atMs, utcOffsetMinutes(atMs));
  const [again, setAgain] = useState(false);
  const [kept, setDraft] = useKeptDraft<MakeSafeDraft>(`makeSafe/${session.packId}`, {
    packVoltageV: null,
    chargeState: null,
    company: null,
    photoId: null,
    acknowledged: [],
  });
  const draft = { ...kept, photoId: kept.photoId ?? unusedPhotoId(record) };
  const cautions = CAUTIONS.filter(({ above50V }) => !above50V || (draft.packVoltageV ?? 0) >= GUARDED_FROM_V);
  const missing = missingForMakeSafe(draft, cautions);
  const photo = record.photos.filter(({ id }) => id === draft.photoId);

  async function pass() {
    if (missing.length > 0 || draft.packVoltageV === null || draft.photoId === null) {
      setAsked(true);
      return;
    }
    const passedAtMs = Date.now();
    const v = {
      passedAtMs,
      day: localDay(passedAtMs, utcOffsetMinutes(passedAtMs)),
      packVoltageV: draft.packVoltageV,
      chargeState: draft.chargeState,
      company: draft.company,
      coveredTerminalsPhoto: draft.photoId,
      acknowledged: cautions.map(({ id }) => id),
    };
    const first = record.state === null;
    setDraft({ ...draft, passedAtMs });
    const saved = await session.put({
      puts: [
        { subject: 'makeSafe', part: randomId(), v },
        ...(first ? [{ subject: 'state', part: 'untouched', v: { enteredAtMs: passedAtMs, leftBehind: [] } }] : []),
      ],
    });
    if (!saved) return;
    setDraft(null);
    nowMs.value = passedAtMs;
    goTo(hrefTo(record.packId, 'lid-off'));
  }

  // Written at a later try: what it was passed with must not stand ticked at the next passage.
  const isUsed = kept.passedAtMs !== undefined && kept.passedAtMs === gate.last?.passedAtMs;
  const isWritten = session.saving.value.now === 'saved';
  useEffect(() => {
    if (isUsed && isWritten) setDraft(null);
  }, [isUsed, isWritten]);

  const back = backToPack(record);
  if (gate.open && gate.last && gate.goodUntilMs !== null && !again) {
    return (
      <Screen
        title={say.title}
        back={back}
        middle={<SmokeHelp record={record} />}
        dockClass="two-rows"
        dock={
          <>
            <NotSaved session={session} />
            <button type="button" class="button" onClick={() => setAgain(true)}>
              {say.again}
            </button>
            <a class="button primary" href={hrefTo(record.packId, 'lid-off')}>
              {say.toLidOff}
            </a>
          </>
        }
      >
        <p>{say.passed(formatMoment(gate.last.passedAtMs, utcOffsetMinutes(gate.last.passedAtMs)))}</p>
        <p>
          {formatValue(gate.last.packVoltageV, 'V')} · {say.chargeStateIs(say.chargeStates[gate.last.chargeState])} ·{' '}
          {say.companies[gate.last.company]}
        </p>
        <p class="muted">{say.goodUntil(formatClock(gate.goodUntilMs, utcOffsetMinutes(gate.goodUntilMs)))}</p>
      </Screen>
    );
  }
  return (
    <Screen
      title={say.title}
      back={back}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          {asked && missing.length > 0 && (
            <p class="notice dock-line" role="alert">
              {say.missing(missing.join(', '))}
            </p>
          )}
          <NotSaved session={session} />
          {again && gate.open && (
            <button type="button" class="button" onClick={() => setAgain(false)}>
              {words.cancel}
            </button>
          )}
          <button type="button" class="button primary" aria-disabled={missing.length > 0} onClick={() => void pass()}>
            {say.pass}
          </button>
        </>
      }
    >
      <p class="notice">{say.lead}</p>
      <NumberField
        id="packVoltageV"
        owner={session.packId}
        label={say.voltage}
        unit="V"
        value={draft.packVoltageV}
        onChange={(packVoltageV) => setDraft({ ...draft, packVoltageV })}
        check={(value) => (value >= 0 && value <= 2000 ? null : say.voltageWrong)}
      />
      {(draft.packVoltageV ?? 0) >= GUARDED_FROM_V && <p class="notice">{ABOVE_50_V}</p>}
      {farFrom(draft.packVoltageV, record.nameplate.nominalVoltageV) && (
        <p class="notice calm">{say.notAsPromised(formatValue(record.nameplate.nominalVoltageV ?? 0, 'V'))}</p>
      )}
      <ChoiceField
        label={say.chargeState}
        choices={(['low', 'part', 'full', 'unknown'] as const).map((id) => ({ id, text: say.chargeStates[id] }))}
        chosen={draft.chargeState}
        onChoose={(chargeState) => setDraft({ ...draft, chargeState })}
      />
      <p class="small muted">{say.chargeAdvice}</p>
      <ChoiceField
        label={say.company}
        choices={(['second-person', 'alone'] as const).map((id) => ({ id, text: say.companies[id] }))}
        chosen={draft.company}
        onChoose={(company) => setDraft({ ...draft, company })}
      />
      {draft.company === 'alone' && <p class="small">{say.aloneAdvice}</p>}
      <section class="stack">
        <h2>{say.photo}</h2>
        {photo.length > 0 && <Thumbs packId={record.packId} photos={photo} title={say.photo} />}
        <button type="button" class="button" onClick={() => setTray(true)}>
          {photo.length > 0 ? say.photoAgain : say.photoTake}
        </button>
      </section>
      <section>
        <h2>{say.cautions}</h2>
        <ul class="lines">
          {cautions.map(({ id, text }) => (
            <li key={id}>
              <label class="tick">
                <input
                  type="checkbox"
                  name={id}
                  checked={draft.acknowledged.includes(id)}
                  onChange={(event) => {
                    const others = draft.acknowledged.filter((other) => other !== id);
                    setDraft({ ...draft, acknowledged: event.currentTarget.checked ? [...others, id] : others });
                  }}
                />
                <span>{text}</span>
              </label>
            </li>
          ))}
        </ul>
      </section>
      {tray && (
        <PhotoTray
          session={session}
          zone="make-safe"
          itemId={null}
          what={say.photo}
          onClose={() => setTray(false)}
          onAdded={([first]) => {
            setTray(false);
            if (first !== undefined) setDraft({ ...draft, photoId: first });
          }}
        />
      )}
    </Screen>
  );
}

/** Our choice: an LFP pack stands within 25 % of its nominal voltage from empty (2.5 of 3.2 V) to full (3.65 V). */
const NEAR_NOMINAL_FRAC = 0.25;

function farFrom(packVoltageV: number | null, nominalVoltageV: number | undefined): boolean {
  if (packVoltageV === null || nominalVoltageV === undefined) return false;
  return Math.abs(packVoltageV - nominalVoltageV) > NEAR_NOMINAL_FRAC * nominalVoltageV;
}

/** The newest photo taken for this gate that no earlier passage rests on: one that came after the page was dropped. */
function unusedPhotoId({ photos, makeSafe }: PackRecord): string | null {
  const used = new Set(makeSafe.map(({ coveredTerminalsPhoto }) => coveredTerminalsPhoto));
  return photos.findLast(({ id, zone }) => zone === 'make-safe' && !used.has(id))?.id ?? null;
}
