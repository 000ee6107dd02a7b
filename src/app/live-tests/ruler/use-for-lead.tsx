import { useState } from 'preact/hooks';
import { TABLE5_INSULATION_DEG_C } from '../../../calc/tables/cfr33-183-425-table5.ts';
import type { RulerResult } from '../../../grading/live-tests/results.ts';
import { LEAD_PLACES, type LeadPlace } from '../../../schema/live-tests/lead.ts';
import { leadName } from '../../../sheet/model/live-tests/lead-name.ts';
import { randomId } from '../../../storage/open-store.ts';
import { localDay } from '../../../text/format-day.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { rulerUseWords as say } from '../../../text/live-tests/ruler.ts';
import { words } from '../../../text/words.ts';
import { Dialog } from '../../../ui/dialog.tsx';
import { ChoiceField } from '../../../ui/fields/choice-field.tsx';
import { nowMs, utcOffsetMinutes } from '../../clock.ts';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { settings } from '../../state/settings.ts';
import { leadKind } from '../kinds/lead.ts';
import { fittingLeads, leadFromRuler, RULER_USES, type RulerUse } from './lead-from-ruler.ts';

interface UseForLeadProps {
  session: PackSession;
  rulerId: string;
  distance: NonNullable<RulerResult['distance']>;
}

/** The three ways from a distance to a conductor. */
export function UseForLead(props: UseForLeadProps) {
  const [use, setUse] = useState<RulerUse | null>(null);
  return (
    <section class="stack">
      <h2>{say.title}</h2>
      <p class="small muted">{say.lead}</p>
      {RULER_USES.map((one) => (
        <button key={one} type="button" class="button" onClick={() => setUse(one)}>
          {say.uses[one]}
        </button>
      ))}
      {use && <UseDialog {...props} use={use} onClose={() => setUse(null)} />}
    </section>
  );
}

function UseDialog({ session, rulerId, distance, use, onClose }: UseForLeadProps & UseDialogProps) {
  const record = session.record.value;
  const { tests } = record;
  const fitting = fittingLeads(tests.leads, use);
  const [target, setTarget] = useState<string>(use === 'barWidth' ? 'link' : 'main');
  const [degC, setDegC] = useState<number | null>(null);
  const chosen = fitting.find(({ id }) => id === target);

  async function take() {
    const place = LEAD_PLACES.find((one): one is LeadPlace => one === target) ?? 'other';
    const atMs = nowMs.peek();
    const into = chosen ?? { id: randomId(), place, on: localDay(atMs, utcOffsetMinutes(atMs)) };
    const put = leadFromRuler({ use, rulerId, distance, into, insulationDegC: degC });
    await session.put({ puts: [put], undoLabel: say.undo });
    // Not there where a closed sheet held it back and it was dropped.
    const isThere = session.record.value.tests.leads.some(({ id }) => id === put.part);
    if (isThere) goTo(hrefTo(record.packId, 'live-test', `${leadKind.id}/${put.part}`));
  }
  return (
    <Dialog title={say.uses[use]} onClose={onClose}>
      <p class="small muted">{say.notes[use]}</p>
      <ChoiceField
        label={say.into}
        choices={[
          ...LEAD_PLACES.map((id) => ({ id: id as string, text: say.newAt[id] })),
          ...fitting.map(({ id }) => ({ id, text: leadName(id, { tests }) })),
        ]}
        chosen={target}
        onChoose={setTarget}
      />
      {use === 'bareStrands' && (
        <>
          <ChoiceField
            label={say.insulation}
            choices={TABLE5_INSULATION_DEG_C.map((one) => ({
              id: String(one),
              text: formatTemperature(one, settings.value.units),
            }))}
            chosen={String(degC ?? chosen?.insulationDegC ?? '')}
            onChoose={(id) => setDegC(Number(id))}
            onClear={() => setDegC(null)}
          />
          <p class="small muted">{say.insulationLead}</p>
        </>
      )}
      <div class="row">
        <button type="button" class="button" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="button" class="button primary" onClick={() => void take()}>
          {say.use}
        </button>
      </div>
    </Dialog>
  );
}

interface UseDialogProps {
  use: RulerUse;
  onClose: () => void;
}
