import { useState } from 'preact/hooks';
import { thermistorBetaDegC, thermistorBetaOhm } from '../../../calc/thermistor-beta.ts';
import { fieldWords } from '../../../text/fields.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { sensorOhmsWords as say } from '../../../text/live-tests/sensor-ohms.ts';
import { NumberField } from '../../../ui/fields/number-field.tsx';
import type { PackSession } from '../../state/pack-session.ts';

/** The usual part in packs: common practice, no source. Shown in their boxes, to be changed. */
const USUAL = { referenceKohm: 10, betaK: 3435 };
/** Our choice: past what any thermistor is made with. */
const MOST = { kohm: 1e6, betaK: 20_000 };
/** Where the cold and hot trials go: 0 °C, its last grade, and the two hot ones. */
const LIMITS_DEG_C = [0, -10, 65, 80];

/** A sensor that shows no temperature anywhere still has ohms: what they mean, and what to look for at the limits. */
export function SensorOhms({ session }: { session: PackSession }) {
  const [referenceKohm, setReferenceKohm] = useState<number | null>(USUAL.referenceKohm);
  const [betaK, setBetaK] = useState<number | null>(USUAL.betaK);
  const [measuredKohm, setMeasuredKohm] = useState<number | null>(null);
  const owner = `${session.packId}/sensor-ohms`;
  const within = (most: number, unit: string) => (value: number) =>
    value <= 0 ? fieldWords.positive : value <= most ? null : fieldWords.atMost(formatValue(most, unit));
  const part = referenceKohm !== null && betaK !== null ? { referenceOhm: referenceKohm * 1000, betaK } : null;
  return (
    <details>
      <summary class="line">
        <span class="title">{say.title}</span>
      </summary>
      <div class="stack">
        <p class="small muted">{say.lead}</p>
        <div class="pair">
          <NumberField
            id="ohms-reference"
            owner={owner}
            label={say.reference}
            unit="kΩ"
            value={referenceKohm}
            check={within(MOST.kohm, 'kΩ')}
            onChange={setReferenceKohm}
          />
          <NumberField
            id="ohms-beta"
            owner={owner}
            label={say.beta}
            unit="K"
            value={betaK}
            check={within(MOST.betaK, 'K')}
            onChange={setBetaK}
          />
        </div>
        <NumberField
          id="ohms-measured"
          owner={owner}
          label={say.measured}
          unit="kΩ"
          value={measuredKohm}
          check={within(MOST.kohm, 'kΩ')}
          onChange={setMeasuredKohm}
        />
        {part && (
          <>
            <p role="status">
              {measuredKohm === null ? '' : temperatureWords({ ...part, resistanceOhm: measuredKohm * 1000 })}
            </p>
            <p class="small">
              {say.limits}{' '}
              {LIMITS_DEG_C.map((tempDegC) => say.limit(tempDegC, thermistorBetaOhm({ ...part, tempDegC }))).join(
                ' · ',
              )}
            </p>
          </>
        )}
        <p class="small muted">{say.source}</p>
      </div>
    </details>
  );
}

function temperatureWords(given: Parameters<typeof thermistorBetaDegC>[0]): string {
  // Below the resistance at which 1/T reaches 0 no temperature belongs to it: R₂₅ · exp(−B/T₂₅).
  const least = given.referenceOhm * Math.exp(-given.betaK / 298.15);
  return given.resistanceOhm > least ? say.is(thermistorBetaDegC(given)) : say.none;
}
