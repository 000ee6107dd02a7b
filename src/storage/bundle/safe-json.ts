import { whyNotPlainJson } from '../../schema/plain-json.ts';
import { RefusedBundle } from './refused-bundle.ts';

/**
 * JSON of a bundle: well-formed UTF-8, of bounded depth and texts, without keys that could reach a prototype.
 *
 * Throws  RefusedBundle
 */
export function safeJson(path: string, bytes: Uint8Array): unknown {
  let value: unknown;
  try {
    value = JSON.parse(textOf(path, bytes));
  } catch (error) {
    if (error instanceof RefusedBundle) throw error;
    throw new RefusedBundle('badJson', `${path}: ${String(error)}`);
  }
  const reason = whyNotPlainJson(value);
  if (reason !== null) throw new RefusedBundle('badJson', `${path} ${reason}`);
  return value;
}

export function textOf(path: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    throw new RefusedBundle('badJson', `${path}: ${String(error)}`);
  }
}
