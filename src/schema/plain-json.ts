/** Deeper values than this are refused. Our choice: our deepest stored value has four levels. */
const MAX_DEPTH = 32;

/** Keys that could reach an object's prototype when a value is copied carelessly. */
const PROTOTYPE_KEYS = new Set(['__proto__', 'prototype', 'constructor']);

/**
 * Says why a value is not plain JSON that may be stored and exchanged, or null when it is: null, booleans, finite
 * numbers, well-formed strings, arrays and plain objects without prototype keys. A member that is undefined counts as
 * absent. Walks without recursion, so that a hostile depth cannot overflow the stack.
 */
export function whyNotPlainJson(value: unknown): string | null {
  const waiting: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value: here, depth } = next;
    if (depth > MAX_DEPTH) return `nested deeper than ${MAX_DEPTH} levels`;
    if (Array.isArray(here)) {
      for (const part of here) {
        if (part === undefined) return 'a list holds an undefined value';
        waiting.push({ value: part, depth: depth + 1 });
      }
    } else if (typeof here === 'object' && here !== null) {
      if (Object.prototype.toString.call(here) !== '[object Object]') return 'holds an object that is not plain data';
      for (const [name, part] of Object.entries(here)) {
        if (PROTOTYPE_KEYS.has(name)) return `holds the forbidden key "${name}"`;
        if (!isWellFormed(name)) return 'holds a name that is not well-formed text';
        if (part !== undefined) waiting.push({ value: part, depth: depth + 1 });
      }
    } else {
      const reason = whyNotScalar(here);
      if (reason !== null) return reason;
    }
  }
  return null;
}

function whyNotScalar(value: unknown): string | null {
  if (value === null || typeof value === 'boolean') return null;
  if (typeof value === 'number') return Number.isFinite(value) ? null : `holds the number ${value}`;
  if (typeof value === 'string') return isWellFormed(value) ? null : 'holds text with half a character in it';
  return `holds a value of type ${typeof value}`;
}

/** True when no surrogate stands alone (as when a cut went through an emoji). */
export function isWellFormed(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}
