import type { ResultBlock, Working } from '../../sheet/model/sheet.ts';
import { resultWords as say } from '../../text/live-tests/result.ts';

/** One result: its figure large, what goes with it, and on a tap how it was worked out. */
export function ResultPart({ block }: { block: ResultBlock }) {
  return (
    <section class="result" aria-label={block.title}>
      <p class="small muted">{block.title}</p>
      <p class="result-value">
        <strong>{block.value}</strong>
        {block.marks.map((mark) => (
          <span key={mark} class="mark">
            {mark}
          </span>
        ))}
      </p>
      {block.rows.length > 0 && (
        <dl class="result-rows">
          {block.rows.map(({ label, value, note }) => (
            <div key={label}>
              <dt class="muted small">{label}</dt>
              <dd>
                {value}
                {note !== undefined && <span class="small muted"> {note}</span>}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {block.working && <WorkingPart working={block.working} />}
    </section>
  );
}

function WorkingPart({ working }: { working: Working }) {
  return (
    <details class="working">
      <summary class="small">{say.working}</summary>
      <div class="stack small">
        <p class="formula">{working.formula}</p>
        {working.inputs.length > 0 && (
          <dl class="result-rows">
            {working.inputs.map(({ label, value }) => (
              <div key={label}>
                <dt class="muted">{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
        {working.uncertainty !== undefined && (
          <p>
            <span class="muted">{say.uncertainty}</span> {working.uncertainty}
          </p>
        )}
        <p>
          <span class="muted">{say.source}</span> {say.sources(working.sources)}
        </p>
      </div>
    </details>
  );
}
