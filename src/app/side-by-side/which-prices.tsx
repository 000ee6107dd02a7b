import type { PriceChoice } from '../../grading/side-by-side/chosen-price.ts';
import type { Compared } from '../../grading/side-by-side/side-by-side.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { formatDay } from '../../text/format-day.ts';
import { formatPrice } from '../../text/format-unit.ts';
import { pricesWords } from '../../text/prices.ts';
import { sideBySideScreenWords as say } from '../../text/side-by-side-screen.ts';
import { words } from '../../text/words.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { hrefTo } from '../route.ts';
import { type Choice, priceOf } from './choice.ts';

interface WhichPricesProps {
  compared: readonly Compared[];
  choice: Choice;
  onChange: (choice: Choice) => void;
}

/** For each pack the price it is counted with, and the options on top. */
export function WhichPrices({ compared, choice, onChange }: WhichPricesProps) {
  function choose(packId: string, price: PriceChoice) {
    onChange({ ...choice, prices: { ...choice.prices, [packId]: price } });
  }
  return (
    <>
      {compared.map(({ packId, record }) => (
        <PriceOfPack
          key={packId}
          record={record}
          chosen={priceOf(choice, packId)}
          onChoose={(price) => choose(packId, price)}
        />
      ))}
    </>
  );
}

const PAID = 'paid';

interface PriceOfPackProps {
  record: PackRecord;
  chosen: PriceChoice;
  onChoose: (price: PriceChoice) => void;
}

function PriceOfPack({ record, chosen, onChoose }: PriceOfPackProps) {
  const { nameplate, offers, packId } = record;
  const prices = [
    ...(nameplate.price === undefined
      ? []
      : [{ id: PAID, text: say.paid(formatPrice(nameplate.price, nameplate.currency)) }]),
    ...offers.filter(({ kind }) => kind === 'price').map((offer) => ({ id: offer.id, text: offerText(offer) })),
  ];
  const options = offers.filter(({ kind }) => kind === 'option');
  const offerId = prices.some(({ id }) => id === chosen.offerId) ? chosen.offerId : null;
  return (
    <section class="stack">
      <h3>{words.packLabel(nameplate.name ?? '', nameplate.sample ?? '')}</h3>
      {prices.length === 0 ? (
        <p class="muted">{say.noPrice}</p>
      ) : (
        <ChoiceField
          label={say.prices}
          choices={prices}
          chosen={offerId ?? PAID}
          onChoose={(id) => onChoose({ ...chosen, offerId: id === PAID ? null : id })}
        />
      )}
      {options.map((option) => {
        const isIn = chosen.optionIds.includes(option.id);
        return (
          <label key={option.id} class="tick">
            <input
              type="checkbox"
              checked={isIn}
              onChange={() =>
                onChoose({
                  ...chosen,
                  optionIds: isIn
                    ? chosen.optionIds.filter((id) => id !== option.id)
                    : [...chosen.optionIds, option.id],
                })
              }
            />
            <span>
              {option.label} <span class="muted">{pricesWords.adds(formatPrice(option.price, option.currency))}</span>
            </span>
          </label>
        );
      })}
      <a class="button quiet" href={hrefTo(packId, 'prices')}>
        {say.change}
      </a>
    </section>
  );
}

function offerText({ label, price, currency, pricedOn }: PackRecord['offers'][number]): string {
  const day = pricedOn === undefined ? null : pricesWords.onDay(formatDay(pricedOn));
  return [label, formatPrice(price, currency), day].filter(Boolean).join(' ');
}
