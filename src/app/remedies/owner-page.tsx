import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import { makeOwnerSheet } from '../../sheet/model/owner-sheet.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { ownerWords as say } from '../../text/owner.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { backToPack } from '../back-to-pack.ts';
import { usePublishedInput } from '../publish/use-published-input.ts';
import { hrefTo } from '../route.ts';
import { PdfActions } from '../sheet/pdf-actions.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';

/** One page for whoever uses the pack, on the screen as it prints. */
export function OwnerPage({ session }: { session: PackSession }) {
  const record = session.record.value;
  const published = usePublishedInput(session);
  const frame = {
    title: say.title,
    back: backToPack(record),
    end: record.demo && <span class="mark">{words.inventedDemo}</span>,
  };
  if (published === 'reading') {
    return (
      <Screen {...frame}>
        <p role="status">{closingWords.reading}</p>
      </Screen>
    );
  }
  const sheet = makeOwnerSheet(published.input, settings.value.paper);
  return (
    <Screen
      {...frame}
      dockClass="two-rows"
      dock={
        <PdfActions sheet={sheet} revision={published.revision}>
          <a class="button" href={hrefTo(record.packId, 'remedies')}>
            {say.toRemedies}
          </a>
        </PdfActions>
      }
    >
      <p class="muted">{say.lead}</p>
      <SheetView sheet={sheet} photo={() => null} />
    </Screen>
  );
}
