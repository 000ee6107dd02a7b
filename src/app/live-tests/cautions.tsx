import { useState } from 'preact/hooks';
import { editingWords as say } from '../../text/live-tests/editing.ts';

/** What to see to before a test. Open for a test that is still to be run, a tap away for one that was. */
export function Cautions({ lines, open }: { lines: readonly string[]; open: boolean }) {
  // As it was when the screen came: nothing above the boxes moves while they are filled in.
  const [first] = useState(open);
  if (lines.length === 0) return null;
  return (
    <details class="notice cautions" open={first}>
      <summary>
        <strong>{say.cautions}</strong>
      </summary>
      <ul class="small">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
