import { useState } from 'preact/hooks';
import type { PackCard } from '../../schema/pack-card.ts';
import { keepWords as say } from '../../text/keep.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { cards, refreshBench } from '../state/bench.ts';
import { forgetOpenPack, opened, openPack } from '../state/open-pack.ts';
import { store } from '../state/store.ts';

/** Packs put away: bring one back, or remove it for good. */
export function AwayPart() {
  const [asking, setAsking] = useState<PackCard | null>(null);
  const away = cards.value.filter(({ gone }) => gone);
  if (away.length === 0) return null;

  async function bringBack(packId: string) {
    forgetOpenPack(packId);
    await openPack(packId);
    if (opened.value.state !== 'open') return;
    await opened.value.session.put({ puts: [{ subject: 'pack', part: 'made', v: {} }] });
  }
  async function remove(packId: string) {
    setAsking(null);
    forgetOpenPack(packId);
    await store().erase(packId);
    await refreshBench();
  }
  return (
    <section class="stack">
      <h2>{say.away}</h2>
      <p class="muted small">{say.awayLead}</p>
      <ul class="lines">
        {away.map((card) => (
          <li key={card.packId} class="stack away">
            <p>{words.packLabel(card.name, card.sample)}</p>
            <div class="row">
              <button type="button" class="button" onClick={() => void bringBack(card.packId)}>
                {say.bringPackBack}
              </button>
              <button type="button" class="button quiet" onClick={() => setAsking(card)}>
                {say.removeForGood}
              </button>
            </div>
          </li>
        ))}
      </ul>
      {asking && (
        <Dialog title={say.removeForGood} onClose={() => setAsking(null)}>
          <p>{say.removeAsk(words.packLabel(asking.name, asking.sample))}</p>
          <div class="row">
            <button type="button" class="button primary" onClick={() => setAsking(null)}>
              {words.cancel}
            </button>
            <button type="button" class="button" onClick={() => void remove(asking.packId)}>
              {say.removeForGood}
            </button>
          </div>
        </Dialog>
      )}
    </section>
  );
}
