import { useRef, useState } from 'preact/hooks';
import { cellGridWords as say } from '../../../text/live-tests/cells.ts';
import { NumberPad } from '../../../ui/fields/number-pad.tsx';
import type { PackSession } from '../../state/pack-session.ts';
import { cellRowCount } from './cell-rows.ts';
import { CellTrouble } from './cell-trouble.tsx';
import { padChosen, padFits, showPad } from './pad-choice.ts';
import { CELL_COLUMNS, type CellColumn } from './read-cell-figure.ts';
import { type CellOffer, useCellBoxes } from './use-cell-boxes.ts';
import './cell-grid.css';

/**
 * The boxes of all cells: one row a cell, one column a quantity, each stored as it is typed. Next goes down the column.
 * In the page the boxes stand column by column, so that the keyboard's own arrows go down as well.
 */
export function CellGrid({ session, id }: { session: PackSession; id: string }) {
  const place = useRef<HTMLElement>(null);
  const boxes = useCellBoxes(session, id);
  const record = session.record.value;
  const set = record.tests.cellSets.find((one) => one.id === id);
  const [shown, setShown] = useState<readonly CellColumn[]>(() =>
    CELL_COLUMNS.filter((column) => column === 'voltageV' || set?.cells.some((cell) => cell[column] !== undefined)),
  );
  const [added, setAdded] = useState(0);
  const [at, setAt] = useState<HTMLInputElement | null>(null);
  if (set === undefined) return null;

  const { cellsInSeries } = record.nameplate;
  const count = cellRowCount({ cellsInSeries, read: set.cells.map(({ number }) => number), added });
  const numbers = Array.from({ length: count }, (_, index) => index + 1);
  const troubles = numbers.flatMap((number) =>
    shown.flatMap((column) => {
      const trouble = boxes.trouble({ number, column });
      return trouble === null ? [] : [{ number, column, trouble }];
    }),
  );
  const offers = troubles.flatMap(({ number, column, trouble }): CellOffer[] =>
    trouble.kind === 'offer' ? [{ number, column, typed: trouble.typed, value: trouble.value }] : [],
  );
  const usesPad = padFits() && padChosen.value;

  function next(from: HTMLInputElement) {
    const all = [...(place.current?.querySelectorAll<HTMLInputElement>('.cell-boxes input') ?? [])];
    const after = all[all.indexOf(from) + 1];
    if (after === undefined) from.blur();
    else {
      after.focus();
      after.select();
    }
  }
  function turn(column: CellColumn) {
    const left = CELL_COLUMNS.filter((one) => (one === column) !== shown.includes(one));
    if (left.length > 0) setShown(left);
  }
  return (
    <section
      ref={place}
      class={usesPad && at !== null ? 'cells stack over-pad' : 'cells stack'}
      onFocusOut={(event) => {
        if (!(event.relatedTarget instanceof Node && place.current?.contains(event.relatedTarget))) setAt(null);
      }}
    >
      <h2>{say.title}</h2>
      <p class="small muted">{cellsInSeries === undefined ? say.leadUnknown : say.lead}</p>
      <fieldset class="choices" aria-label={say.columns}>
        {CELL_COLUMNS.map((column) => (
          <button
            key={column}
            type="button"
            class="choice"
            aria-pressed={shown.includes(column)}
            onClick={() => turn(column)}
          >
            {say.column[column]}
          </button>
        ))}
      </fieldset>
      <div class={`cell-boxes columns-${shown.length}`}>
        <span class="column-name small muted" style={{ gridArea: '1 / 1' }}>
          {say.cell}
        </span>
        {numbers.map((number) => (
          <span key={number} class="cell-number" aria-hidden="true" style={{ gridArea: `${2 * number} / 1` }}>
            {number}
          </span>
        ))}
        {shown.map((column, index) => [
          <span
            key={column}
            class="column-name small muted"
            aria-hidden="true"
            style={{ gridArea: `1 / ${index + 2}` }}
          >
            {say.column[column]}
          </span>,
          ...numbers.map((number) => (
            <div key={`${column}-${number}`} class="box" style={{ gridArea: `${2 * number} / ${index + 2}` }}>
              <input
                type="text"
                inputMode={usesPad ? 'none' : 'decimal'}
                enterkeyhint="next"
                autocomplete="off"
                aria-label={say.box(number, say.column[column])}
                aria-invalid={boxes.trouble({ number, column }) !== null}
                value={boxes.text({ number, column })}
                onInput={(event) => boxes.type({ number, column }, event.currentTarget.value)}
                onFocus={(event) => setAt(event.currentTarget)}
                onBlur={() => boxes.leave({ number, column })}
                onKeyDown={(event) => {
                  if (event.key !== 'Enter') return;
                  event.preventDefault();
                  next(event.currentTarget);
                }}
              />
            </div>
          )),
        ])}
        {numbers.map((number) => {
          const here = troubles.filter((one) => one.number === number);
          return (
            here.length > 0 && (
              <div key={number} class="cell-troubles" style={{ gridArea: `${2 * number + 1} / 1 / auto / -1` }}>
                {here.map((one) => (
                  <CellTrouble key={one.column} {...one} onTake={boxes.take} />
                ))}
              </div>
            )
          );
        })}
      </div>
      {offers.length > 1 && (
        <button type="button" class="button" onClick={() => boxes.takeAll(offers)}>
          {say.takeAll(offers.length)}
        </button>
      )}
      <button type="button" class="button" onClick={() => setAdded(added + 1)}>
        {say.more}
      </button>
      {usesPad && at !== null && (
        <NumberPad
          box={at}
          label={at.getAttribute('aria-label') ?? ''}
          onNext={() => next(at)}
          onAway={() => at.blur()}
          onKeyboard={() => {
            showPad(false);
            at.focus();
          }}
        />
      )}
    </section>
  );
}
