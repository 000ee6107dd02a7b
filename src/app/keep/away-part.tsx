import { useState } from 'preact/hooks';
import type { PackCard } from '../../schema/pack-card.ts';
import { packWords } from '../../text/bench.ts';
import { keepWords as say } from '../../text/keep.ts';
import { words, writeProblems } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { bringBackPut } from '../put-away.ts';
import { cards, refreshBench } from '../state/bench.ts';
import { eraseFromPhone } from '../state/kept.ts';
import { dropOpenPack, forgetOpenPack, opened, openPack } from '../state/open-pack.ts';

/** Packs put away: bring one back, or remove it for good. */
export function AwayPart() {
  const [asking, setAsking] = useState<PackCard | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const away = cards.value.filter(({ gone }) => gone);
  if (away.length === 0 && said === null) return null;

  async function bringBack(card: PackCard) {
    const { packId, name, sample } = card;
    forgetOpenPack(packId);
    await openPack(packId);
    const now = opened.value;
    if (now.state !== 'open') return setSaid(packWords.noDefinition);
    const saved = await now.session.put({ puts: [bringBackPut(card)] });
    const { saving } = now.session;
    if (saved) setSaid(say.isBack(words.packLabel(name, sample)));
    else if (saving.value.now === 'notSaved') setSaid(writeProblems[saving.value.problem]);
  }
  async function remove({ packId, name, sample }: PackCard) {
    setAsking(null);
    const problem = await eraseFromPhone(packId);
    if (problem !== null) return setSaid(writeProblems[problem]);
    dropOpenPack(packId);
    await refreshBench();
    setSaid(say.isRemoved(words.packLabel(name, sample)));
  }
  return (
    <section class="stack">
      <h2>{say.away}</h2>
      {said !== null && (
        <p class="notice calm" role="status">
          {said}
        </p>
      )}
      {away.length > 0 && <p class="muted small">{say.awayLead}</p>}
      <ul class="lines">
        {away.map((card) => (
          <li key={card.packId} class="stack away">
            <p>{words.packLabel(card.name, card.sample)}</p>
            <div class="row">
              <button type="button" class="button" onClick={() => void bringBack(card)}>
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
            <button type="button" class="button" onClick={() => void remove(asking)}>
              {say.removeForGood}
            </button>
          </div>
        </Dialog>
      )}
    </section>
  );
}
