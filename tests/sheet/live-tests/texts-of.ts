import type { Block, PlotBlock, ResultBlock } from '../../../src/sheet/model/sheet.ts';

/** Every text that blocks hold, those of their drawings included. */
export function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

/** Every number in them: all of a drawing's, for a block's own figures are texts. */
export function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(numbersOf);
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}

/** Spaces as typed, so that expected words can be written plainly. */
export function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}

export function results(blocks: readonly Block[]): ResultBlock[] {
  return blocks.filter((block): block is ResultBlock => block.kind === 'result');
}

export function plots(blocks: readonly Block[]): PlotBlock[] {
  return blocks.filter((block): block is PlotBlock => block.kind === 'plot');
}

/** The result with this id, its words plain: "Energy: 3741 Wh (note)" for each row. */
export function result(blocks: readonly Block[], id: string) {
  const found = results(blocks).find((block) => block.id === id);
  if (found === undefined) throw new Error(`there is no result ${id}: ${results(blocks).map((block) => block.id)}`);
  return {
    title: plain(found.title),
    value: plain(found.value),
    marks: found.marks.map(plain),
    rows: found.rows.map(({ label, value, note }) =>
      plain(note === undefined ? `${label}: ${value}` : `${label}: ${value} (${note})`),
    ),
    formula: found.working === null ? null : plain(found.working.formula),
    inputs: (found.working?.inputs ?? []).map(({ label, value }) => plain(`${label}: ${value}`)),
    uncertainty: found.working?.uncertainty === undefined ? null : plain(found.working.uncertainty),
    sources: found.working?.sources ?? [],
  };
}

/** Words of every block that is no result and no plot. */
export function said(blocks: readonly Block[]): string[] {
  return blocks
    .filter(({ kind }) => kind !== 'result' && kind !== 'plot')
    .flatMap(textsOf)
    .map(plain);
}
