import { signal } from '@preact/signals';
import type { Vanished } from '../../storage/store.ts';

/** Set at the start when records that were on this phone are not there any more. */
export const vanished = signal<Vanished | null>(null);
