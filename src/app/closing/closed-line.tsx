import { closingWords as say } from '../../text/closing-screens.ts';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** Over every screen of a pack whose sheet is closed: said before somebody types much. */
export function ClosedLine({ session }: { session: PackSession }) {
  const { sheet } = session.record.value;
  if (sheet.now !== 'closed') return null;
  return (
    <p class="closed-line" role="note">
      <a href={hrefTo(session.packId, 'sheet')}>{say.line(sheet.revision)}</a>
      <span class="muted">{say.lineHint}</span>
    </p>
  );
}
