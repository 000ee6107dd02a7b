import { figureIn, span } from '../../../text/live-tests/results/figures.ts';
import { sideBySideWords } from '../../../text/side-by-side.ts';
import type { PackColumn } from './pack-columns.ts';

const say = sideBySideWords.basis;

/** Ends of runs so near one another are alike. Our choice: 0.05 V of a cell at 2.5 V, which past the knee is next to nothing. */
const ALIKE_WITHIN_FRAC = 0.02;

interface Known {
  name: string;
  lowV: number;
  highV: number;
}

/** What of the figures does not compare because the packs are of different voltages, or were run down to different ones. */
export function voltageLines(columns: readonly PackColumn[]): string[] {
  return [...nominalLines(columns), ...cutOffLines(columns)];
}

function nominalLines(columns: readonly PackColumn[]): string[] {
  if (columns.length < 2) return [];
  const unknown = columns.filter((column) => nominalV(column) === undefined).map(({ name }) => name);
  const known = columns.flatMap((column) => {
    const voltageV = nominalV(column);
    return voltageV === undefined ? [] : [{ name: column.name, lowV: voltageV, highV: voltageV }];
  });
  const differ = new Set(known.map(({ lowV }) => lowV)).size > 1;
  return [
    ...(differ ? [say.voltages(known.map(rowOf))] : []),
    ...(unknown.length === 0 ? [] : [say.voltagesUnknown(unknown)]),
  ];
}

/** By the runs that the delivered figures rest on; of a cell where every pack says how many it has. */
function cutOffLines(columns: readonly PackColumn[]): string[] {
  const run = columns.filter(({ capacity }) => (capacity?.delivered?.runIds.length ?? 0) > 0);
  if (run.length < 2) return [];
  const perCell = run.every(({ record }) => record.nameplate.cellsInSeries !== undefined);
  const isOneVoltage = new Set(run.map(nominalV)).size === 1 && run.every((column) => nominalV(column) !== undefined);
  const ends = run.map((column) => ({
    name: column.name,
    end: perCell || isOneVoltage ? endOf(column, perCell) : null,
  }));
  const known = ends.flatMap(({ name, end }): Known[] => (end === null ? [] : [{ name, ...end }]));
  const unknown = ends.filter(({ end }) => end === null).map(({ name }) => name);
  const lowestV = Math.min(...known.map(({ lowV }) => lowV));
  const highestV = Math.max(...known.map(({ highV }) => highV));
  return [
    ...(known.length > 1 && highestV > lowestV * (1 + ALIKE_WITHIN_FRAC)
      ? [say.cutOffs(known.map(rowOf), perCell)]
      : []),
    ...(unknown.length === 0 ? [] : [say.cutOffsUnknown(unknown)]),
  ];
}

/** Null where one of the runs does not say. */
function endOf({ capacity, record }: PackColumn, perCell: boolean): Omit<Known, 'name'> | null {
  const cells = perCell ? (record.nameplate.cellsInSeries ?? 1) : 1;
  const counted = capacity?.runs.filter(({ run }) => capacity.delivered?.runIds.includes(run.id)) ?? [];
  const endsV = counted.flatMap(({ run }) => (run.endVoltageV === undefined ? [] : [run.endVoltageV / cells]));
  if (endsV.length === 0 || endsV.length < counted.length) return null;
  return { lowV: Math.min(...endsV), highV: Math.max(...endsV) };
}

function rowOf({ name, lowV, highV }: Known): string {
  return say.ofPack(name, lowV === highV ? figureIn(lowV, 'V') : span({ low: lowV, high: highV }, 'V'));
}

function nominalV({ record }: PackColumn): number | undefined {
  return record.nameplate.nominalVoltageV;
}
