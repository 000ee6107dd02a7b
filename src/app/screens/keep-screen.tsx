import { keepWords as say } from '../../text/keep.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { APP_VERSION } from '../app-version.ts';
import { AwayPart } from '../keep/away-part.tsx';
import { BackupPart } from '../keep/backup-part.tsx';
import { ChecklistsPart } from '../keep/checklists-part.tsx';
import { LookPart } from '../keep/look-part.tsx';
import { RecheckPart } from '../keep/recheck-part.tsx';
import { RegradeLink } from '../keep/regrade-link.tsx';
import { RestorePart } from '../keep/restore-part.tsx';
import { SpacePart } from '../keep/space-part.tsx';

/** Keep: space, backup, restore, checklists on board, and how this phone shows things. */
export function KeepScreen() {
  return (
    <Screen title={say.title} back={{ href: '#/', label: words.bench }}>
      <BackupPart />
      <RestorePart />
      <RecheckPart />
      <SpacePart />
      <LookPart />
      <AwayPart />
      <RegradeLink />
      <ChecklistsPart />
      <section class="stack">
        <h2>{say.about}</h2>
        <p>{say.version(APP_VERSION)}</p>
        <p class="small muted">{say.notCertified}</p>
      </section>
    </Screen>
  );
}
