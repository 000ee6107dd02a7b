/**
 * Characters that no text of a record may hold: they do not show, and change how the text around them reads or is
 * handled. C0 and C1 controls but tab and line feed, bidirectional embeddings, overrides and isolates, the byte order
 * mark and the interlinear annotation marks. Direction marks (U+200E, U+200F) and joiners stay: scripts need them.
 *
 * Source  Unicode Standard Annex #9, table 4 (bidirectional controls); Unicode 15.0, sections 23.1 and 23.8
 */
const HIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: controls are what is looked for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufeff\ufff9-\ufffb]/g;

/** The text without them; a carriage return, alone or before a line feed, becomes a line feed. */
export function plainText(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(HIDDEN, '');
}

/** Which of them a text holds, each once, in order: "U+202E". Empty for plain text. */
export function hiddenCharacters(text: string): string[] {
  return [...new Set(text.match(HIDDEN) ?? [])].map(codePointText);
}

/** Where in a JSON value a text, or the name of a member, is not plain, and what it holds. */
export interface HiddenPlace {
  /** Members and list places joined by dots; empty for the value itself. */
  place: string;
  characters: string[];
  isName: boolean;
}

/** Every such place, in order. The value must be of bounded depth (see whyNotPlainJson). */
export function hiddenPlaces(value: unknown, place = ''): HiddenPlace[] {
  if (typeof value === 'string') return foundIn(value, { place, isName: false });
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => {
    const inside = place === '' ? plainText(name) : `${place}.${plainText(name)}`;
    const named = Array.isArray(value) ? [] : foundIn(name, { place: inside, isName: true });
    return [...named, ...hiddenPlaces(part, inside)];
  });
}

/** The value with every text in it made plain, `ifNothing` where nothing is left of one; names of members are left. */
export function withPlainTexts(value: unknown, ifNothing = ''): unknown {
  if (typeof value === 'string') return value && (plainText(value) || ifNothing);
  if (Array.isArray(value)) return value.map((part) => withPlainTexts(part, ifNothing));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, withPlainTexts(part, ifNothing)]));
}

function foundIn(text: string, where: Omit<HiddenPlace, 'characters'>): HiddenPlace[] {
  const characters = hiddenCharacters(text);
  return characters.length === 0 ? [] : [{ ...where, characters }];
}

function codePointText(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
