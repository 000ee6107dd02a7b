import { plainText } from '../schema/plain-text.ts';

/**
 * A value as it will come back from a bundle: a plain copy, undefined members left out, hidden characters taken out,
 * half characters (a cut through an emoji) made U+FFFD. So whatever is stored can also be saved and restored.
 */
export function storable(value: unknown): unknown {
  if (typeof value === 'string') return plainText(value).replace(/\p{Surrogate}/gu, '\ufffd');
  if (Array.isArray(value)) return value.map(storable);
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value).filter(([, part]) => part !== undefined);
    return Object.fromEntries(members.map(([name, part]) => [name, storable(part)]));
  }
  return value;
}
