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
import { Fold } from '../parts/fold.tsx';

/** Keep: first what keeps records from being lost; below it, folded, what is seldom needed. */
export function KeepScreen() {
  return (
    <Screen title={say.title} back={{ href: '#/', label: words.bench }}>
      <BackupPart />
      <RestorePart />
      <AwayPart />
      <SpacePart />
      <div class="folds">
        <LookPart />
        <RecheckPart />
        <ChecklistsPart />
        <RegradeLink />
        <Fold title={say.about} hint={say.aboutHint} part="about">
          <p>{say.version(APP_VERSION)}</p>
          <p class="small muted">{say.notCertified}</p>
        </Fold>
      </div>
    </Screen>
  );
}
