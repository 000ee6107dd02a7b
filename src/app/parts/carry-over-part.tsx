import { useEffect, useState } from 'preact/hooks';
import { gradeRecord } from '../../grading/grade-record.ts';
import { carryOverWords as say } from '../../text/carry-over.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { carryOverChange } from '../regrade/carry-over-change.ts';
import { newestOnBoard } from '../regrade/newest-on-board.ts';
import { ScoreBy } from '../regrade/score-by.tsx';
import type { LoadedDefinition } from '../state/definitions.ts';
import { isNewerVersion } from '../state/is-newer-version.ts';
import type { PackSession } from '../state/pack-session.ts';

/** Offers the newer version of the pack's checklist, with the score by each; says so once it was carried over. */
export function CarryOverPart({ session }: { session: PackSession }) {
  const [newer, setNewer] = useState<LoadedDefinition | null>(null);
  const [asking, setAsking] = useState(false);
  const { definition } = session.definition;
  const record = session.record.value;

  useEffect(() => {
    newestOnBoard(definition.id).then(
      (newest) =>
        setNewer(newest !== null && isNewerVersion(newest.definition.version, definition.version) ? newest : null),
      (error) => console.warn('carry over: the newest checklist did not load', error),
    );
  }, [definition]);

  if (newer === null) {
    return record.carriedFrom && <p class="small muted">{say.carried(record.carriedFrom.version)}</p>;
  }

  async function carry(to: LoadedDefinition) {
    setAsking(false);
    await session.put(carryOverChange(record, to));
  }
  return (
    <section class="stack">
      <p class="notice calm small">
        {say.onBoard(definition.version, newer.definition.version)}
        {newer.definition.status === 'draft' && ` ${say.isDraft}`}
      </p>
      <button type="button" class="button" onClick={() => setAsking(true)}>
        {say.look}
      </button>
      {asking && (
        <Dialog title={say.title(newer.definition.version)} onClose={() => setAsking(false)}>
          <p>{say.lead}</p>
          <ScoreBy version={definition.version} grading={session.grading.value} />
          <ScoreBy version={newer.definition.version} grading={gradeRecord(newer.definition, record)} />
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {say.stay(definition.version)}
            </button>
            <button type="button" class="button primary" onClick={() => void carry(newer)}>
              {say.carry}
            </button>
          </div>
        </Dialog>
      )}
    </section>
  );
}
