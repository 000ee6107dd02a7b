/**
 * Whether a name stands twice in one object of a JSON text. JSON.parse takes the last without a word, other readers the
 * first: such a text says two things. Outside strings every colon is one member, so the text has more of them than
 * its value has members.
 *
 * Source  RFC 8259, section 4: names should be unique; RFC 7493 (I-JSON), section 2.3: they must be
 * Check   tests/schema/repeated-names.test.ts
 */
export function hasRepeatedNames(text: string, value: unknown): boolean {
  const outside = text.replace(/"(?:[^"\\]|\\.)*"/g, '');
  return outside.split(':').length - 1 > memberCount(value);
}

/** Without recursion, so that a hostile depth cannot overflow the stack. */
function memberCount(value: unknown): number {
  const waiting = [value];
  let count = 0;
  while (waiting.length > 0) {
    const here = waiting.pop();
    if (typeof here !== 'object' || here === null) continue;
    const parts: unknown[] = Object.values(here);
    if (!Array.isArray(here)) count += parts.length;
    for (const part of parts) waiting.push(part);
  }
  return count;
}
