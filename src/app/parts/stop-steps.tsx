import type { Item } from '../../schema/checklist.ts';
import { stopWords } from '../../text/stop.ts';
import { hrefTo } from '../route.ts';

/** What to do while a stop finding stands, and the ways on that stay open. */
export function StopSteps({
  packId,
  items,
  onCorrect,
}: {
  packId: string;
  items: readonly Item[];
  onCorrect?: () => void;
}) {
  const first = items[0];
  return (
    <div class="stack">
      {items.map((item) => (
        <p key={item.id} class="notice">
          <strong>{stopWords.lead(item.title)}</strong> {item.grades.failed}
        </p>
      ))}
      <ol class="steps">
        {stopWords.steps.map((step) => (
          <li key={step}>
            <span>{step}</span>
          </li>
        ))}
      </ol>
      <p class="muted">{stopWords.closed}</p>
      <div class="row">
        {first && (
          <a class="button" href={hrefTo(packId, 'item', first.id)} onClick={onCorrect}>
            {stopWords.correct}
          </a>
        )}
        <a class="button" href={hrefTo(packId, 'afterwards')}>
          {stopWords.setApart}
        </a>
        <a class="button primary" href={hrefTo(packId, 'sheet')}>
          {stopWords.toSheet}
        </a>
      </div>
    </div>
  );
}
