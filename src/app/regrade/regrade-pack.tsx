import { useState } from 'preact/hooks';
import { checklistsWords } from '../../text/checklists.ts';
import { regradeWords as say } from '../../text/regrade.ts';
import { SheetBlock } from '../../ui/sheet/sheet-block.tsx';
import { hrefTo } from '../route.ts';
import { moveRows } from './move-rows.ts';
import { ScoreBy } from './score-by.tsx';
import type { Surveyed } from './survey.ts';

interface RegradePackProps {
  pack: Surveyed;
  ticked: boolean;
  onTick: (ticked: boolean) => void;
}

/** One pack by both checklists, and why they differ; ticked, it is among those to be carried over. */
export function RegradePack({ pack, ticked, onTick }: RegradePackProps) {
  const { label, closed, from, to, was, now } = pack;
  // The lines of sixty packs are only made for those that are looked into.
  const [open, setOpen] = useState(false);
  return (
    <li class="regrade-pack">
      <label class="tick">
        <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.currentTarget.checked)} />
        <span>
          <strong>{label}</strong>
          {to.definition.status === 'draft' && (
            <>
              {' '}
              <span class="mark">{checklistsWords.draftMark}</span>
            </>
          )}
          {closed && (
            <>
              {' '}
              <span class="mark">{say.becomesRevision}</span>
            </>
          )}
        </span>
      </label>
      <div class="both">
        <ScoreBy version={from.definition.version} grading={was} />
        <ScoreBy version={to.definition.version} grading={now} />
      </div>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary class="line">
          <span class="title">{say.why}</span>
        </summary>
        {open && <Why pack={pack} />}
      </details>
    </li>
  );
}

function Why({ pack }: { pack: Surveyed }) {
  return (
    <div class="stack">
      <p class="small muted">{pack.moves.lowChange === null ? say.moves.noPoints : say.moves.shown}</p>
      <SheetBlock block={{ kind: 'ledger', rows: moveRows(pack) }} photo={() => null} />
      <a class="button quiet" href={hrefTo(pack.packId)}>
        {say.openPack}
      </a>
    </div>
  );
}
