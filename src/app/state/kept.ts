import { signal } from '@preact/signals';
import type { WriteProblem } from '../../storage/store.ts';
import { closedRecords } from './closed-records.ts';
import { store } from './store.ts';

/** Why what was typed or ticked, and is no entry yet, could not be kept on the phone; null while all of it is. */
export const notKept = signal<WriteProblem | null>(null);

/** What could not be kept, by name: it holds for as long as the page does, and is tried again. */
const waiting = new Map<string, unknown>();

/** Keeps a draft on the phone. Never rejects: what could not be kept is said (`notKept`) and stays in hand. */
export async function keepOnPhone(name: string, value: unknown): Promise<void> {
  waiting.set(name, value);
  try {
    await store().keep(name, value);
    if (waiting.get(name) === value) waiting.delete(name);
    if (waiting.size === 0) notKept.value = null;
  } catch (error) {
    console.warn(`draft: ${name} is not kept`, error);
    notKept.value = problemOf(error);
  }
}

/** A draft as it was last given, kept or not; null if there is none or it cannot be read. */
export async function keptOnPhone<T>(name: string): Promise<T | null> {
  if (waiting.has(name)) return waiting.get(name) as T | null;
  try {
    return await store().kept<T>(name);
  } catch (error) {
    console.warn(`draft: ${name} cannot be read`, error);
    return null;
  }
}

export async function keepAgain(): Promise<void> {
  for (const [name, value] of [...waiting]) await keepOnPhone(name, value);
}

/** Takes every trace of a pack off this phone; null, or why that failed. */
export async function eraseFromPhone(packId: string): Promise<WriteProblem | null> {
  try {
    await store().erase(packId);
    return null;
  } catch (error) {
    console.warn('erase: failed', error);
    return problemOf(error);
  }
}

/** Why the phone did not take something. */
export function problemOf(error: unknown): WriteProblem {
  if (error instanceof Error && error.name === 'QuotaExceededError') return 'quotaFull';
  return closedRecords.peek() ?? 'failed';
}
