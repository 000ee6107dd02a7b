import type { Dice } from './dice.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** Changes that know nothing of what the bytes mean. */
export const BYTE_CHANGES: Readonly<Record<string, (bytes: Bytes, dice: Dice) => Bytes>> = {
  flips(bytes, dice) {
    const copy = bytes.slice();
    for (let times = 1 + dice.below(8); times > 0; times -= 1) {
      const at = dice.below(copy.length);
      copy[at] = (copy[at] ?? 0) ^ (1 << dice.below(8));
    }
    return copy;
  },
  cut: (bytes, dice) => bytes.slice(0, dice.below(bytes.length)),
  beheaded: (bytes, dice) => bytes.slice(dice.below(bytes.length)),
  doubled(bytes, dice) {
    const [from, to] = span(bytes, dice);
    return joined(bytes.subarray(0, to), bytes.subarray(from));
  },
  spliced(bytes, dice) {
    const [from, to] = span(bytes, dice);
    const at = dice.below(bytes.length);
    return joined(bytes.subarray(0, at), bytes.subarray(from, to), bytes.subarray(at));
  },
  takenOut(bytes, dice) {
    const [from, to] = span(bytes, dice);
    return joined(bytes.subarray(0, from), bytes.subarray(to));
  },
  overwritten(bytes, dice) {
    const copy = bytes.slice();
    const [from, to] = span(bytes, dice);
    copy.fill(dice.of([0, 0xff, 0x20, dice.below(256)]), from, to);
    return copy;
  },
};

function span(bytes: Bytes, dice: Dice): [from: number, to: number] {
  const from = dice.below(bytes.length);
  return [from, from + 1 + dice.below(Math.min(200, bytes.length - from))];
}

function joined(...parts: Bytes[]): Bytes {
  return new Uint8Array(Buffer.concat(parts));
}
