import { expect } from 'vitest';

const isBuffer = (value: unknown): value is ArrayBuffer =>
  Object.prototype.toString.call(value) === '[object ArrayBuffer]';

/** `toEqual` on its own takes any two ArrayBuffers for equal, since they have no members: here their bytes count. */
expect.addEqualityTesters([
  function sameBytes(a: unknown, b: unknown) {
    if (!isBuffer(a) || !isBuffer(b)) return undefined;
    const [left, right] = [new Uint8Array(a), new Uint8Array(b)];
    return left.length === right.length && left.every((byte, i) => byte === right[i]);
  },
]);
