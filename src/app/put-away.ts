import type { Put } from '../storage/store.ts';

/** Puts a pack away. An invented one stays known as invented, or its sheet would no longer say so once it is back. */
export function putAwayPut({ demo }: { demo: boolean }): Put {
  const made = { subject: 'pack', part: 'made' };
  return demo ? { ...made, v: { demo, away: true } } : { ...made, gone: true };
}

export function bringBackPut({ demo }: { demo: boolean }): Put {
  return { subject: 'pack', part: 'made', v: demo ? { demo } : {} };
}
