import { randomId } from '../../../storage/open-store.ts';
import { rulerUseWords as say } from '../../../text/live-tests/ruler.ts';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';

/** Beneath leads: the way to the photo ruler, which leads back to them. */
export function MeasureLead({ session }: { session: PackSession }) {
  return (
    <button
      type="button"
      class="button"
      onClick={() => goTo(hrefTo(session.packId, 'live-test', `ruler/${randomId()}`))}
    >
      {say.fromLeads}
    </button>
  );
}
