/** Packs or strings side by side. */
export const parallelWords = {
  matter: 'Side by side',
  one: 'Parallel run',
  of: { packs: 'packs', strings: 'strings' },
  pack: (number: number) => `pack\u00a0${number}`,
  string: (number: number) => `string\u00a0${number}`,
  worst: (percent: string) => `worst ${percent} off an equal share`,
  unknown: 'sharing not known',
  why: 'it takes the charge of all of them, and of two at least',
  labels: { why: 'Why', current: 'Current together' },
  highest: (current: string) => `highest ${current}`,
  notRead: 'not read',
  share: (charge: string, share: string) => `${charge}, ${share}`,
  formula: 'share = Q ÷ ΣQ; worst = |share × number − 1|',
  plot: {
    alt: (parts: readonly string[]) => `Share of the charge. ${parts.join(', ')}.`,
    nothing: 'Nothing was read.',
    equal: 'equal share',
    axis: 'Share of the charge',
    caption: 'Share of the charge that each gave, against an equal share.',
    altOne: (name: string, share: string) => `${name} ${share}`,
  },
};
