/**
 * The one text of a JSON value: keys sorted by UTF-16 units, no spaces, numbers as ECMAScript writes them.
 *
 * Members that are undefined are left out, as in JSON. Object keys and strings must be well-formed.
 * Throws  RangeError for NaN, infinities and lone surrogates; TypeError for what JSON cannot hold.
 * Source  RFC 8785 (JSON Canonicalization Scheme), sections 3.2.2 and 3.2.3
 * Check   tests/record/canonical-json.test.ts
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return numberText(value);
  if (typeof value === 'string') return stringText(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') return objectText(value);
  throw new TypeError(`canonicalJson: the value must be JSON, got ${typeof value}`);
}

function objectText(value: object): string {
  const members = Object.entries(value).filter(([, part]) => part !== undefined);
  members.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([name, part]) => `${stringText(name)}:${canonicalJson(part)}`).join(',')}}`;
}

function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`canonicalJson: a number must be finite, got ${value}`);
  return JSON.stringify(value);
}

function stringText(value: string): string {
  if (/\p{Surrogate}/u.test(value))
    throw new RangeError('canonicalJson: text must be well-formed, got a lone surrogate');
  return JSON.stringify(value);
}
