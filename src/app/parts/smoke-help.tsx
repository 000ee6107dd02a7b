import { useState } from 'preact/hooks';
import type { PackRecord } from '../../record/pack-record.ts';
import { formatTyped } from '../../text/format-number.ts';
import { withUnit } from '../../text/format-unit.ts';
import { smokeWords } from '../../text/smoke.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';

/** One tap to what to do on smoke, hiss, smell or heat. */
export function SmokeHelp({ record }: { record: PackRecord }) {
  const [open, setOpen] = useState(false);
  const energy = energyWords(record);
  return (
    <>
      <button type="button" class="smoke" onClick={() => setOpen(true)}>
        {smokeWords.button}
      </button>
      {open && (
        <Dialog title={smokeWords.title} whole onClose={() => setOpen(false)}>
          <ol class="steps">
            {smokeWords.steps.map((step) => (
              <li key={step}>
                <span>{step}</span>
              </li>
            ))}
          </ol>
          {energy && <p class="notice">{smokeWords.energy(energy)}</p>}
          <p class="muted">{smokeWords.after}</p>
          <button type="button" class="button primary" onClick={() => setOpen(false)}>
            {words.close}
          </button>
        </Dialog>
      )}
    </>
  );
}

/** The energy to tell the fire service: as claimed, or capacity times voltage. Null when neither is known. */
function energyWords({ nameplate }: PackRecord): string | null {
  const { ratedEnergyWh, ratedCapacityAh, nominalVoltageV } = nameplate;
  const product =
    ratedCapacityAh !== undefined && nominalVoltageV !== undefined ? ratedCapacityAh * nominalVoltageV : null;
  const energyWh = ratedEnergyWh ?? product;
  return energyWh === null ? null : withUnit(formatTyped(Math.round(energyWh)), 'Wh');
}
