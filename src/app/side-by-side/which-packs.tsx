import { MOST_PACKS } from '../../grading/side-by-side/side-by-side.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import { sideBySideScreenWords as say } from '../../text/side-by-side-screen.ts';
import { words } from '../../text/words.ts';

interface WhichPacksProps {
  here: readonly PackCard[];
  packIds: readonly string[];
  onChange: (packIds: string[]) => void;
}

/** The packs on the bench, ticked where they stand side by side. */
export function WhichPacks({ here, packIds, onChange }: WhichPacksProps) {
  const isFull = packIds.length >= MOST_PACKS;
  return (
    <>
      {isFull && <p class="small muted">{say.most}</p>}
      <ul class="lines">
        {here.map((card) => {
          const isIn = packIds.includes(card.packId);
          return (
            <li key={card.packId}>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={isIn}
                  disabled={!isIn && isFull}
                  onChange={() =>
                    onChange(isIn ? packIds.filter((id) => id !== card.packId) : [...packIds, card.packId])
                  }
                />
                <span>
                  {words.packLabel(card.name, card.sample)}{' '}
                  <span class="small muted">
                    {say.settled(card.settledCount, card.askedCount)}
                    {card.demo && ` · ${words.inventedDemo}`}
                  </span>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
    </>
  );
}
