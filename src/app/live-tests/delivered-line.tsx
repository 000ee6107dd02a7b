import { promisedEnergy } from '../../calc/promised-energy.ts';
import { capacityResult } from '../../grading/live-tests/capacity-result.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { formatFixed, formatSignificant } from '../../text/format-number.ts';
import { formatValue, withUnit } from '../../text/format-unit.ts';
import { liveTestsWords as say } from '../../text/live-tests/live-tests.ts';
import { sharePercent } from '../../text/live-tests/results/figures.ts';

/** Delivered against promised at a glance: charge, energy, and the share of what was promised. */
export function DeliveredLine({ record }: { record: PackRecord }) {
  const { nameplate } = record;
  const { delivered } = capacityResult(record);
  const energy = promisedEnergy(nameplate);
  const promised = [
    ...(nameplate.ratedCapacityAh === undefined ? [] : [formatValue(nameplate.ratedCapacityAh, 'Ah')]),
    ...(energy === null ? [] : [withUnit(formatFixed(energy.energyWh, 0), 'Wh')]),
  ];
  const found =
    delivered === null
      ? []
      : [
          ...(delivered.chargeAh === null ? [] : [withUnit(formatSignificant(delivered.chargeAh, 4), 'Ah')]),
          ...(delivered.energyWh === null ? [] : [withUnit(formatFixed(delivered.energyWh, 0), 'Wh')]),
        ];
  const figures = found.join(' · ');
  const shares = [
    ...shareOf(delivered?.chargeShareFrac ?? null, say.ofPromised.charge),
    ...shareOf(delivered?.energyShareFrac ?? null, say.ofPromised.energy),
  ];
  return (
    <dl class="delivered">
      <div>
        <dt class="small muted">{say.promised}</dt>
        <dd>{promised.length === 0 ? say.notPromised : promised.join(' · ')}</dd>
      </div>
      <div>
        <dt class="small muted">{say.delivered}</dt>
        <dd>{figures === '' ? say.notRun : delivered?.atLeast ? say.atLeast(figures) : figures}</dd>
        {shares.length > 0 && <dd class="note">{say.shares(shares)}</dd>}
        {delivered?.atLeast && <dd class="note">{say.atLeastNote}</dd>}
      </div>
    </dl>
  );
}

function shareOf(frac: number | null, words: (share: string) => string): string[] {
  return frac === null ? [] : [words(sharePercent(frac))];
}
