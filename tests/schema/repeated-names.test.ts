import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hasRepeatedNames } from '../../src/schema/repeated-names.ts';

it.each([
  ['{"a":1,"a":1}', true],
  ['{"a":1,"\\u0061":2}', true],
  ['[{"b":{"a":1,"c":[],"a":2}}]', true],
  ['{"a":1,"b":{"a":1}}', false],
  ['{"a":"\\":{:\\\\","b":":"}', false],
  ['{"__proto__":1,"a":2}', false],
  ['":"', false],
  ['7', false],
])('finds whether a name stands twice in one object of %s: %s', (text, found) => {
  expect(hasRepeatedNames(text, JSON.parse(text))).toBe(found);
});

it('finds none in 500 texts that JSON.stringify wrote, and one where the first member is written twice', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue(), { minKeys: 1 }), fc.nat(2), (value, indent) => {
      const text = JSON.stringify(value, null, indent);
      expect(hasRepeatedNames(text, JSON.parse(text))).toBe(false);
      const [name = ''] = Object.keys(JSON.parse(text) as object);
      const twice = text.replace('{', () => `{${JSON.stringify(name)}:0,`);
      expect(hasRepeatedNames(twice, JSON.parse(twice))).toBe(true);
    }),
    { numRuns: 500 },
  );
});
