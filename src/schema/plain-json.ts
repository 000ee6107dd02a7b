import { hiddenCharacters } from './plain-text.ts';

/** How much a JSON value may hold. */
export interface JsonLimits {
  depth: number;
  /** Of one text or name, in UTF-16 units. */
  textLength: number;
  /** Scalars, lists and objects together. */
  valueCount: number;
}

/**
 * Of one entry. Our choice: our deepest value has four levels, our longest text is a note of 2000, and our largest value
 * is a run's curve of five times 600 points; each with room for what a newer minor version may add.
 */
export const ENTRY_LIMITS: JsonLimits = { depth: 32, textLength: 20_000, valueCount: 20_000 };

/** Of a whole file: lists of entries, a definition, a sealed sheet. What it may weigh is limited before it is read. */
export const FILE_LIMITS: JsonLimits = { depth: 40, textLength: 20_000, valueCount: 2_000_000 };

/** Longest name of a member. Our choice: ids are shorter; a bundle's paths are values, not names. */
const MAX_NAME = 200;

/**
 * Says why a value is not plain JSON that may be stored and exchanged, or null when it is: null, booleans, finite
 * numbers, well-formed strings, arrays and plain objects, within limits. Names must be visible text, and none that every
 * object has already ("constructor", "toString"). A member that is undefined counts as absent. Walks without recursion,
 * so that a hostile depth cannot overflow the stack.
 */
export function whyNotPlainJson(value: unknown, limits: JsonLimits = FILE_LIMITS): string | null {
  const waiting: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  let count = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value: here, depth } = next;
    if (depth > limits.depth) return `nested deeper than ${limits.depth} levels`;
    count += 1;
    if (count > limits.valueCount) return `holds more than ${limits.valueCount} values`;
    if (Array.isArray(here)) {
      for (const part of here) {
        if (part === undefined) return 'a list holds an undefined value';
        waiting.push({ value: part, depth: depth + 1 });
      }
    } else if (typeof here === 'object' && here !== null) {
      if (Object.prototype.toString.call(here) !== '[object Object]') return 'holds an object that is not plain data';
      for (const [name, part] of Object.entries(here)) {
        const reason = whyNotName(name);
        if (reason !== null) return reason;
        if (part !== undefined) waiting.push({ value: part, depth: depth + 1 });
      }
    } else {
      const reason = whyNotScalar(here, limits);
      if (reason !== null) return reason;
    }
  }
  return null;
}

function whyNotName(name: string): string | null {
  // "prototype" is a member of functions only, but copied carelessly it reaches as far.
  if (name === 'prototype' || name in Object.prototype) return `holds the forbidden key "${name}"`;
  if (name === '') return 'holds a name without a letter';
  if (name.length > MAX_NAME) return `holds a name of ${name.length} characters`;
  if (!isWellFormed(name)) return 'holds a name that is not well-formed text';
  const hidden = hiddenCharacters(name);
  return hidden.length === 0 ? null : `holds a name with ${hidden.join(', ')} in it`;
}

function whyNotScalar(value: unknown, limits: JsonLimits): string | null {
  if (value === null || typeof value === 'boolean') return null;
  if (typeof value === 'number') return Number.isFinite(value) ? null : `holds the number ${value}`;
  if (typeof value !== 'string') return `holds a value of type ${typeof value}`;
  if (value.length > limits.textLength) return `holds a text of ${value.length} characters`;
  return isWellFormed(value) ? null : 'holds text with half a character in it';
}

/** True when no surrogate stands alone (as when a cut went through an emoji). */
export function isWellFormed(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}
