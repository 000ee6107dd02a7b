import '../../ui/sheet/result.css';
import '../../ui/sheet/sheet.css';
import type { FinishedReading } from '../../grading/finished-readings.ts';
import { readingBlocks } from '../../sheet/model/second-reading-blocks.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { SavedMark } from '../../ui/saved-mark.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SheetBlock } from '../../ui/sheet/sheet-block.tsx';
import { NotSaved } from '../parts/not-saved.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** How a finished reading agrees with the record: the same blocks as on the sheet. */
export function AgreementPage({ session, reading }: { session: PackSession; reading: FinishedReading }) {
  const items = new Map(session.definition.definition.items.map((item) => [item.id, item]));
  function itemOf(itemId: string) {
    const item = items.get(itemId);
    if (item === undefined) throw new RangeError(`AgreementPage: item must be in the definition, got ${itemId}`);
    return item;
  }
  return (
    <Screen
      title={say.nameOf(reading.number, reading.reader.label)}
      back={{ href: hrefTo(session.packId, 'second-reader'), label: say.leave }}
      dockClass="two-rows"
      dock={
        <>
          <div class="saved-line">
            <NotSaved session={session} />
            <SavedMark now={session.saving.value.now} />
          </div>
          <a class="button primary" href={hrefTo(session.packId, 'sheet')}>
            {say.toSheet}
          </a>
        </>
      }
    >
      <section class="stack since">
        {readingBlocks({ itemOf }, reading).map((block, place) => (
          <SheetBlock key={place} block={block} photo={() => null} />
        ))}
      </section>
    </Screen>
  );
}
