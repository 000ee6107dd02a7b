import type { RetestOf } from '../schema/closing.ts';

/** Beginning a new pack from one that was tested before. */
export const retestWords = {
  button: 'Test it again',
  title: 'Test it again',
  lead: 'A new pack is begun from this one’s nameplate: what the maker claims of the product. What belongs to this one sample is left empty, and everything is seen anew. This pack stays as it is.',
  kind: 'What is to be tested',
  kinds: {
    sample: { title: 'Another sample', hint: 'The same product once more.' },
    productRevision: { title: 'A new revision', hint: 'The maker changed the product.' },
  } satisfies Record<RetestOf['kind'], { title: string; hint: string }>,
  becomes: (label: string) => `It will be called ${label}.`,
  begin: 'Begin the new pack',
  notBegun:
    'The new pack could not be begun: this phone did not save it. This pack is as it was. Free some space, then try again.',
  begunFrom: (label: string) => `Begun from ${label}; check each against this pack’s own label.`,
};
