import type { PackRecord } from '../../../record/pack-record.ts';
import { costBlocks } from '../../../sheet/model/live-tests/cost-blocks.ts';
import { rateBlocks } from '../../../sheet/model/live-tests/rate-blocks.ts';
import type { ResultBlock } from '../../../sheet/model/sheet.ts';
import { runWords as say } from '../../../text/live-tests/run.ts';
import { DeliveredLine } from '../delivered-line.tsx';
import type { TestContext } from '../test-kind.ts';

/** Delivered against promised, cost and what a hard rate leaves, without their working: that stands below the list. */
export function RunGlance({ record, context }: { record: PackRecord; context: TestContext }) {
  const figures = [...costBlocks(context), ...rateBlocks(context)].filter(
    (block): block is ResultBlock => block.kind === 'result',
  );
  return (
    <section class="stack" aria-label={say.glance}>
      <DeliveredLine record={record} />
      {figures.length > 0 && (
        <dl class="delivered glance">
          {figures.map(({ id, title, value, marks }) => (
            <div key={id}>
              <dt class="small muted">{title}</dt>
              <dd>{value}</dd>
              {marks.length > 0 && <dd class="note">{marks.join(', ')}</dd>}
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
