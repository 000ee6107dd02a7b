import { signal } from '@preact/signals';

/** Why the records can no longer be reached: `old`, a newer Underlid has taken them over; `closed`, they were cut off. */
export const closedRecords = signal<'old' | 'closed' | null>(null);
