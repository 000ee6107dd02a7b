import '../../ui/sheet/grid.css';
import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import { chosenPrice } from '../../grading/side-by-side/chosen-price.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import { comparisonCsv } from '../../sheet/csv/comparison-csv.ts';
import type { Sheet } from '../../sheet/model/sheet.ts';
import { makeSideBySide } from '../../sheet/model/side-by-side/make-side-by-side.ts';
import { onlyDiffering } from '../../sheet/model/side-by-side/only-differing.ts';
import { sideBySideScreenWords as say } from '../../text/side-by-side-screen.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { SheetView } from '../../ui/sheet/sheet-view.tsx';
import { APP_VERSION } from '../app-version.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { Fold } from '../parts/fold.tsx';
import { HandOver } from '../parts/hand-over.tsx';
import { PdfActions } from '../sheet/pdf-actions.tsx';
import { cards } from '../state/bench.ts';
import { settings } from '../state/settings.ts';
import { type Choice, priceOf, useChoice } from './choice.ts';
import { type ComparedPacks, useCompared } from './use-compared.ts';
import { WhichPacks } from './which-packs.tsx';
import { WhichPrices } from './which-prices.tsx';

/** Packs of the bench side by side: which, at which price, what they come to, and the ways to take it away. */
export function SideBySidePage() {
  const here = cards.value.filter(({ gone }) => !gone);
  const [choice, setChoice] = useChoice(here);
  const found = useCompared(choice?.packIds ?? null);
  if (choice === null) return <Screen {...FRAME}>{null}</Screen>;
  if (here.length < 2) {
    return (
      <Screen
        {...FRAME}
        dock={
          <a class="button primary" href="#/">
            {say.toBench}
          </a>
        }
      >
        <p>{say.tooFew}</p>
      </Screen>
    );
  }
  const isRead = typeof found !== 'string' && found.compared.length > 0;
  const paper = isRead && choice.packIds.length > 1 ? paperOf(found, choice) : null;
  const shown = paper && choice.onlyDiffering ? onlyDiffering(paper).paper : paper;
  return (
    <Screen {...FRAME} {...(shown && { dockClass: 'two-rows', dock: <PdfActions sheet={shown} revision={null} /> })}>
      <div class="folds">
        <Fold title={say.which} hint={say.whichHint(choice.packIds.length)} part="which">
          <WhichPacks here={here} packIds={choice.packIds} onChange={(packIds) => setChoice({ ...choice, packIds })} />
        </Fold>
        {isRead && (
          <Fold title={say.prices} hint={say.pricesHint} part="prices">
            <WhichPrices compared={found.compared} choice={choice} onChange={setChoice} />
          </Fold>
        )}
      </div>
      {choice.packIds.length < 2 && <p class="notice calm">{say.pick}</p>}
      {found === 'reading' && <p role="status">{say.reading}</p>}
      {found === 'failed' && (
        <p class="notice" role="alert">
          {say.failed}
        </p>
      )}
      {isRead && found.unreadIds.length > 0 && (
        <p class="notice calm small">{say.unread(namesOf(here, found.unreadIds))}</p>
      )}
      {isRead && paper && shown && (
        <>
          <label class="tick">
            <input
              type="checkbox"
              checked={choice.onlyDiffering}
              onChange={(event) => setChoice({ ...choice, onlyDiffering: event.currentTarget.checked })}
            />
            <span>{say.onlyDiffering}</span>
          </label>
          <p class="small muted" role="status">
            {found.drawing === 'drawing' ? say.drawing : found.drawing === 'failed' ? say.notDrawn : ' '}
          </p>
          <SheetView sheet={shown} photo={() => null} />
          <HandOver label={say.csv} make={async () => csvOf(paper)} />
        </>
      )}
    </Screen>
  );
}

const FRAME = { title: say.title, back: { href: '#/', label: words.bench } };

function paperOf(found: ComparedPacks, choice: Choice): Sheet {
  const { compared, result, firmness, protections, unsealedIds } = found;
  return makeSideBySide({
    compared,
    result,
    firmness,
    protections,
    unsealedIds,
    prices: compared.map(({ packId, record }) => chosenPrice(record, priceOf(choice, packId))),
    units: settings.value.units,
    appVersion: APP_VERSION,
    utcOffsetMinutes: utcOffsetMinutes(nowMs.peek()),
  });
}

function csvOf(paper: Sheet): File {
  return new File([comparisonCsv(paper)], `${say.fileName}.csv`, { type: 'text/csv' });
}

function namesOf(here: readonly PackCard[], packIds: readonly string[]): string {
  const named = here.filter(({ packId }) => packIds.includes(packId));
  return named.map(({ name, sample }) => words.packLabel(name, sample)).join(', ');
}
