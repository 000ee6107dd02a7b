import { useEffect, useState } from 'preact/hooks';
import { liveResults } from '../../grading/live-tests/live-results.ts';
import { sideBySide } from '../../grading/side-by-side/compare.ts';
import { protectionsOf } from '../../grading/side-by-side/protections.ts';
import type { Firmness, Protection, SideBySide } from '../../grading/side-by-side/side-by-side.ts';
import { firmnessInWorker } from './firmness-in-worker.ts';
import { type ReadPacks, readPacks } from './read-packs.ts';

/** Our choice: enough that a share is right to one in a hundred, few enough to be there at once. The seed is any number. */
const DRAWS = { draws: 10_000, seed: 20_261_125 };

export interface ComparedPacks extends ReadPacks {
  result: SideBySide;
  protections: readonly (readonly Protection[])[];
  /** One a group; null while it is being drawn, where there is no order, or where it could not be drawn. */
  firmness: readonly (Firmness | null)[];
  drawing: 'drawing' | 'done' | 'failed';
}

/** These packs, read and ranked; the weightings follow from a worker. */
export function useCompared(packIds: readonly string[] | null): ComparedPacks | 'reading' | 'failed' {
  const [found, setFound] = useState<ComparedPacks | 'reading' | 'failed'>('reading');
  const key = packIds?.join() ?? null;
  useEffect(() => {
    if (packIds === null) return;
    const abort = new AbortController();
    const show = (next: ComparedPacks | 'failed') => {
      if (!abort.signal.aborted) setFound(next);
    };
    compare(packIds, show, abort.signal).catch((error: unknown) => {
      console.error('side by side: not read', error);
      show('failed');
    });
    return () => abort.abort();
  }, [key]);
  return found;
}

async function compare(packIds: readonly string[], show: (found: ComparedPacks) => void, signal: AbortSignal) {
  const read = await readPacks(packIds);
  const result = sideBySide(read.compared);
  const protections = read.compared.map(({ record }) => protectionsOf(liveResults(record), record.tests));
  const none = result.groups.map(() => null);
  const shown = { ...read, result, protections };
  const isOrdered = result.groups.some(({ firmness }) => firmness !== null);
  show({ ...shown, firmness: none, drawing: isOrdered ? 'drawing' : 'done' });
  if (!isOrdered || signal.aborted) return;
  try {
    const drawn = await Promise.all(
      result.groups.map((group) => (group.firmness === null ? null : firmnessInWorker(group.firmness, DRAWS, signal))),
    );
    show({ ...shown, firmness: drawn, drawing: 'done' });
  } catch (error) {
    if (signal.aborted) return;
    console.error('side by side: order not weighed', error);
    show({ ...shown, firmness: none, drawing: 'failed' });
  }
}
