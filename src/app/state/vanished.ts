import { signal } from '@preact/signals';

/** Set at the start when records that were on this phone are not there any more. */
export const vanished = signal<{ since: string; packCount: number } | null>(null);
