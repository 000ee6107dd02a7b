import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import { makeOwnerSheet } from '../../sheet/model/owner-sheet.ts';
import { ownerWords as say } from '../../text/owner.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { backToPack } from '../back-to-pack.ts';
import { hrefTo } from '../route.ts';
import { PdfActions } from '../sheet/pdf-actions.tsx';
import { openSheetInput } from '../sheet/sheet-input.ts';
import type { PackSession } from '../state/pack-session.ts';

/** One page for whoever uses the pack, on the screen as it prints. */
export function OwnerPage({ session }: { session: PackSession }) {
  const record = session.record.value;
  const sheet = makeOwnerSheet(openSheetInput(session, { since: null, isAsSealed: true }));
  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      end={record.demo && <span class="mark">{words.inventedDemo}</span>}
      dockClass="two-rows"
      dock={
        <PdfActions sheet={sheet} revision={null}>
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
