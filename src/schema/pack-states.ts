/** The state of the pack in which a question is put. */
export const PACK_STATES = ['arrival', 'loaded', 'untouched', 'liveOpen', 'apart'] as const;
export type PackState = (typeof PACK_STATES)[number];

/** The three states of Lid off, in the order in which a pack goes through them. */
export const LID_OFF_STATES = ['untouched', 'liveOpen', 'apart'] as const;
export type LidOffState = (typeof LID_OFF_STATES)[number];

export const ROUTES = ['short', 'whole'] as const;
export type Route = (typeof ROUTES)[number];
