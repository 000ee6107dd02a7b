import { useState } from 'preact/hooks';
import { type ParallelShare, parallelShareSchema } from '../../../schema/live-tests/parallel-run.ts';
import { fieldWords } from '../../../text/fields.ts';
import { parallelWords as say } from '../../../text/live-tests/parallel.ts';
import { NumberField } from '../../../ui/fields/number-field.tsx';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { limitProblem } from '../../parts/limit-problem.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { numberedPut } from '../numbered-put.ts';

const LEAST_SHARES = 2;

/** Beneath a parallel run: what each of those side by side gave, kept as it is typed. */
export function ShareRows({ session, id }: { session: PackSession; id: string }) {
  const [added, setAdded] = useState(0);
  const runOf = () => session.record.value.tests.parallelRuns.find((one) => one.id === id);
  const run = runOf();
  if (run === undefined) return null;
  const nameOf = run.of === 'packs' ? say.pack : say.string;
  const count = Math.max(LEAST_SHARES, ...run.shares.map(({ number }) => number)) + added;

  function change(number: number, key: keyof typeof say.shareLabels, value: number | string | null) {
    const before = runOf()?.shares.find((share) => share.number === number);
    const put = numberedPut({ subject: 'parallelShare', setId: id, number, before }, key, value);
    void session.put({ puts: [put], undoLabel: `${nameOf(number)}: ${say.shareLabels[key].toLowerCase()}` });
  }
  return (
    <section class="stack">
      <h2>{say.each}</h2>
      <p class="small muted">{say.eachLead}</p>
      {Array.from({ length: count }, (_, place) => place + 1).map((number) => (
        <ShareBoxes
          key={number}
          title={nameOf(number)}
          owner={`${session.packId}/${id}/${number}`}
          place={`share-${number}`}
          share={run.shares.find((share) => share.number === number) ?? {}}
          onChange={(key, value) => change(number, key, value)}
        />
      ))}
      <button type="button" class="button" onClick={() => setAdded(added + 1)}>
        {say.more[run.of]}
      </button>
    </section>
  );
}

interface ShareBoxesProps {
  title: string;
  owner: string;
  /** Start of the ids of its boxes. */
  place: string;
  share: ParallelShare;
  onChange: (key: keyof typeof say.shareLabels, value: number | string | null) => void;
}

function ShareBoxes({ title, owner, place, share, onChange }: ShareBoxesProps) {
  const figure = (key: 'chargeAh' | 'highestA', unit: string) => (
    <NumberField
      id={`${place}-${key}`}
      owner={owner}
      label={say.shareLabels[key]}
      unit={unit}
      value={share[key] ?? null}
      check={(value) =>
        value < 0 ? fieldWords.negative : limitProblem(parallelShareSchema.entries[key], value, { unit })
      }
      onChange={(value) => onChange(key, value)}
    />
  );
  return (
    <fieldset class="stack">
      <legend>
        <strong>{title}</strong>
      </legend>
      <TextField
        id={`${place}-label`}
        owner={owner}
        label={say.shareLabels.label}
        value={share.label ?? ''}
        onChange={(label) => onChange('label', label)}
      />
      <div class="pair">
        {figure('chargeAh', 'Ah')}
        {figure('highestA', 'A')}
      </div>
    </fieldset>
  );
}
