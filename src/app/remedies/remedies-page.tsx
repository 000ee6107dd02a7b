import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import './remedies.css';
import { useState } from 'preact/hooks';
import { remedyBlock } from '../../sheet/model/remedy-blocks.ts';
import { costAfterBlocks } from '../../sheet/model/remedy-cost-blocks.ts';
import { afterSettled } from '../../sheet/model/result-blocks.ts';
import { type SheetContext, sheetContext } from '../../sheet/model/sheet-context.ts';
import { smallestSetBlocks } from '../../sheet/model/smallest-set-blocks.ts';
import { remedyWords as say } from '../../text/remedies.ts';
import { listOf } from '../../text/sheet.ts';
import { words } from '../../text/words.ts';
import { RuleView } from '../../ui/rule-view.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SheetBlock } from '../../ui/sheet/sheet-block.tsx';
import { backToPack } from '../back-to-pack.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import { StopSteps } from '../parts/stop-steps.tsx';
import { hrefTo } from '../route.ts';
import { openSheetInput } from '../sheet/sheet-input.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';
import { RemedyCard } from './remedy-card.tsx';
import { RemedyDialog } from './remedy-dialog.tsx';

/** What would put it right, in the printed order, with what each takes and what the pack then comes to. */
export function RemediesPage({ session }: { session: PackSession }) {
  const [asking, setAsking] = useState<number | null>(null);
  const record = session.record.value;
  const grading = session.grading.value;
  const { definition } = session.definition;
  const asked = asking === null ? undefined : grading.remedies[asking];
  const remedy = definition.remedies.find(({ id }) => id === asked?.remedyId);
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      end={record.demo && <span class="mark">{words.inventedDemo}</span>}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <a class="button" href={hrefTo(record.packId, 'sheet')}>
            {say.toSheet}
          </a>
          <a class="button primary" href={hrefTo(record.packId, 'owner')}>
            {say.toOwner}
          </a>
        </>
      }
    >
      {grading.stop === 'failed' ? (
        <>
          <p>{say.withheld}</p>
          <StopSteps packId={record.packId} items={stopFindings(definition, grading)} />
        </>
      ) : grading.score === null || grading.remedies.length === 0 ? (
        <p>{grading.score === null ? say.nothingToScore : say.none}</p>
      ) : (
        <Listed
          context={sheetContext(openSheetInput(session, { since: null, isAsSealed: true }))}
          onChange={(place) => setAsking(place)}
        />
      )}
      {asking !== null && remedy !== undefined && (
        <RemedyDialog
          key={remedy.id}
          session={session}
          remedy={remedy}
          number={asking + 1}
          onClose={() => setAsking(null)}
        />
      )}
    </Screen>
  );
}

function Listed({ context, onChange }: { context: SheetContext; onChange: (place: number) => void }) {
  const { grading, itemOf } = context;
  const { remedies, settled, after } = grading;
  const costs = costAfterBlocks(context);
  return (
    <>
      <p class="muted">{say.lead}</p>
      <p class="notice">{say.caution}</p>
      <section class="stack smallest">
        <h2>{say.smallest.title}</h2>
        {smallestSetBlocks(context).map((block, place) => (
          <SheetBlock key={place} block={block} photo={() => null} />
        ))}
      </section>
      <section class="stack">
        <h2>{say.steps}</h2>
        <p>{say.asFound}</p>
        <RuleView score={grading.score} settled={settled} />
        <ol class="stack remedies">
          {remedies.map((remedy, place) => (
            <RemedyCard
              key={remedy.remedyId}
              block={remedyBlock(context, remedy, place + 1)}
              after={remedy.cumulative}
              settled={afterSettled({ settled, remedies: remedies.slice(0, place + 1) }, 'workshop')}
              items={listOf(remedy.itemIds.map((id) => itemOf(id).title))}
              onChange={() => onChange(place)}
            />
          ))}
        </ol>
        <p>{say.afterOutside}</p>
        <RuleView score={after.outside} settled={afterSettled(grading, 'outside')} />
        <p>{say.afterAll}</p>
        <RuleView score={after.workshop} settled={afterSettled(grading, 'workshop')} />
      </section>
      <section class="stack">
        <h2>{say.costs.title}</h2>
        {costs.length === 0 ? (
          <p class="muted">{say.costs.nonePriced}</p>
        ) : (
          costs
            .filter(({ kind }) => kind !== 'subhead')
            .map((block, place) => <SheetBlock key={place} block={block} photo={() => null} />)
        )}
      </section>
    </>
  );
}
