import type { PackCard } from '../schema/pack-card.ts';
import { benchWords, stageWords } from '../text/bench.ts';
import { verdictWords } from '../text/verdict.ts';
import { words } from '../text/words.ts';
import { Lid } from './lid.tsx';
import { RuleView } from './rule-view.tsx';
import { Tape } from './tape.tsx';

/** One pack on the bench: its strip of tape, its picture, how it stands. */
export function BenchCard({ card, href, pictureUrl }: { card: PackCard; href: string; pictureUrl: string | null }) {
  const begun = card.settledCount > 0 || card.stage !== 'nameplate';
  const all = card.settledCount === card.askedCount;
  const settled = all
    ? card.route === 'whole'
      ? benchWords.wholeSettled
      : benchWords.shortSettled
    : benchWords.settled(card.settledCount, card.askedCount);
  return (
    <a class="card bench-card" href={href}>
      <Tape>{words.packLabel(card.name, card.sample)}</Tape>
      {card.closed !== undefined && <span class="tag closed">{benchWords.closed}</span>}
      <div class="inside">
        <div class="picture">
          {pictureUrl && <img class="card-picture" src={pictureUrl} alt="" />}
          {card.photoId === null && <Lid outcome={card.worst ?? 'notSeen'} widthPx={44} />}
        </div>
        <div>
          <strong>{begun ? verdictWords(card.verdict).title : stageWords[card.stage]}</strong>
          <br />
          <span class="small muted">{begun ? `${stageWords[card.stage]} · ${settled}` : settled}</span>
          {card.demo && (
            <>
              {' '}
              <span class="mark">{words.inventedDemo}</span>
            </>
          )}
        </div>
      </div>
      {begun && card.score && <RuleView score={card.score} settled={card.score.settled} />}
    </a>
  );
}
