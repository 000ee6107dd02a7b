import { signal } from '@preact/signals';

/** The pack another tab has just written; a new object each time. */
export const otherTabWrote = signal<{ packId: string } | null>(null);
