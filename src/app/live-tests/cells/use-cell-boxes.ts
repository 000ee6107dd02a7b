import { useEffect, useRef } from 'preact/hooks';
import type { CellReading } from '../../../schema/live-tests/cell-set.ts';
import type { Put } from '../../../storage/store.ts';
import { cellGridWords as say } from '../../../text/live-tests/cells.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { numberedPut } from '../numbered-put.ts';
import { boxName, type CellBoxPlace, cellDrafts, setCellDraft } from './cell-drafts.ts';
import { readCellFigure } from './read-cell-figure.ts';

/** As long as in every other box. */
const SETTLE_MS = 500;

export interface CellOffer extends CellBoxPlace {
  typed: string;
  value: number;
}

/** The boxes of one round: what each shows, and what happens to what is typed into it. */
export function useCellBoxes(session: PackSession, setId: string) {
  const round = { packId: session.packId, setId };
  const drafts = cellDrafts(session.packId, setId);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const typing = useRef<CellBoxPlace | null>(null);

  const stored = ({ number, column }: CellBoxPlace): number | undefined => readingOf(number)?.[column];
  function readingOf(number: number): CellReading | undefined {
    const set = session.record.value.tests.cellSets.find(({ id }) => id === setId);
    return set?.cells.find((cell) => cell.number === number);
  }
  function putOf({ number, column }: CellBoxPlace, value: number | null): Put {
    return numberedPut({ subject: 'cell', setId, number, before: readingOf(number) }, column, value);
  }
  function store(place: CellBoxPlace, value: number | null) {
    if ((stored(place) ?? null) === value) return;
    const undoLabel = say.undo(place.number, say.column[place.column]);
    void session.put({ puts: [putOf(place, value)], undoLabel });
  }

  /** The typing has come to rest: a figure is stored, anything else stays in its box. */
  function settle(place: CellBoxPlace, { leaving }: { leaving: boolean }) {
    clearTimeout(timer.current);
    typing.current = null;
    const draft = drafts.peek()[boxName(place)];
    if (draft === undefined) return;
    const figure = readCellFigure(place.column, draft.text);
    if (figure.kind === 'value') store(place, figure.value);
    if (figure.kind === 'empty') store(place, null);
    const taken = figure.kind === 'value' || figure.kind === 'empty';
    // While the box is being typed in it shows what was typed: "3.30" is not turned into "3.3" under the finger.
    if (taken && leaving) setCellDraft(round, place, null);
    else setCellDraft(round, place, { text: draft.text, settled: !taken });
  }
  useEffect(() => () => typing.current && settle(typing.current, { leaving: true }), []);

  return {
    text(place: CellBoxPlace): string {
      const value = stored(place);
      return drafts.value[boxName(place)]?.text ?? (value === undefined ? '' : String(Number(value.toPrecision(12))));
    },
    /** What is said of a box once the typing rests; null where there is nothing to say. */
    trouble(place: CellBoxPlace) {
      const draft = drafts.value[boxName(place)];
      if (draft?.settled !== true) return null;
      const figure = readCellFigure(place.column, draft.text);
      return figure.kind === 'offer' || figure.kind === 'wrong' ? { ...figure, typed: draft.text.trim() } : null;
    },
    type(place: CellBoxPlace, text: string) {
      setCellDraft(round, place, { text, settled: false });
      typing.current = place;
      clearTimeout(timer.current);
      timer.current = setTimeout(() => settle(place, { leaving: false }), SETTLE_MS);
    },
    leave: (place: CellBoxPlace) => settle(place, { leaving: true }),
    take({ value, ...place }: CellOffer) {
      setCellDraft(round, place, null);
      store(place, value);
    },
    /** Several at once, in one step that Undo takes back. */
    takeAll(offers: readonly CellOffer[]) {
      for (const offer of offers) setCellDraft(round, offer, null);
      void session.put({ puts: putsOf(offers, readingOf, setId), undoLabel: say.undoAll });
    },
  };
}

/** Two figures of one cell go into one entry. */
function putsOf(offers: readonly CellOffer[], readingOf: (number: number) => CellReading | undefined, setId: string) {
  const numbers = [...new Set(offers.map(({ number }) => number))];
  return numbers.map((number): Put => {
    const figures = Object.fromEntries(
      offers.filter((offer) => offer.number === number).map(({ column, value }) => [column, value]),
    );
    const { number: _number, ...before }: CellReading & { number?: number } = readingOf(number) ?? {};
    return { subject: 'cell', part: `${setId}/${number}`, v: { ...before, ...figures } };
  });
}
