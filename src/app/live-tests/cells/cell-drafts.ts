import { type Signal, signal } from '@preact/signals';
import { keepOnPhone, keptOnPhone } from '../../state/kept.ts';
import type { CellColumn } from './read-cell-figure.ts';

/** What stands in a box and is not, or not yet, stored; `settled` once the typing has come to rest. */
export interface CellDraft {
  text: string;
  settled: boolean;
}
/** By `boxName`. */
export type CellDrafts = Readonly<Record<string, CellDraft>>;

export interface CellBoxPlace {
  number: number;
  column: CellColumn;
}

const rounds = new Map<string, Signal<CellDrafts>>();

/**
 * What was typed into the boxes of one round and could not be stored. Kept on the phone, so that a dropped page brings
 * it back with its sentence.
 */
export function cellDrafts(packId: string, setId: string): Signal<CellDrafts> {
  const name = nameOf(packId, setId);
  const known = rounds.get(name);
  if (known) return known;
  const drafts = signal<CellDrafts>({});
  rounds.set(name, drafts);
  void keptOnPhone<CellDrafts>(name).then((found) => {
    if (found !== null) drafts.value = { ...found, ...drafts.value };
  });
  return drafts;
}

/** Null takes it away. */
export function setCellDraft(
  round: { packId: string; setId: string },
  place: CellBoxPlace,
  draft: CellDraft | null,
): void {
  const drafts = cellDrafts(round.packId, round.setId);
  const { [boxName(place)]: before, ...others } = drafts.value;
  if (before === undefined && draft === null) return;
  drafts.value = draft === null ? others : { ...others, [boxName(place)]: draft };
  const left = Object.fromEntries(Object.entries(drafts.value).filter(([, { settled }]) => settled));
  void keepOnPhone(nameOf(round.packId, round.setId), Object.keys(left).length === 0 ? null : left);
}

export function boxName({ number, column }: CellBoxPlace): string {
  return `${column}-${number}`;
}

function nameOf(packId: string, setId: string): string {
  return `cellDrafts/${packId}/${setId}`;
}
