/** A box as a key of the pad finds it: its text and what is marked in it. Null where the browser does not say. */
export interface TypedBox {
  text: string;
  from: number | null;
  to: number | null;
}

/** Puts a character in place of what is marked, or where the caret stands. */
export function typeInto({ text, from, to }: TypedBox, character: string): TypedBox {
  const start = from ?? text.length;
  const caret = start + character.length;
  return { text: text.slice(0, start) + character + text.slice(to ?? text.length), from: caret, to: caret };
}

/** Takes away what is marked, or else the character before the caret. */
export function eraseBefore({ text, from, to }: TypedBox): TypedBox {
  const end = to ?? text.length;
  const start = from === null || from === end ? Math.max(0, end - 1) : from;
  return { text: text.slice(0, start) + text.slice(end), from: start, to: start };
}

/** Puts a minus before the figure, or takes it away; the caret stays with its digit. */
export function turnSign({ text, from, to }: TypedBox): TypedBox {
  const isNegative = /^\s*[-\u2212]/.test(text);
  const turned = isNegative ? text.replace(/^\s*[-\u2212]/, '') : `-${text}`;
  const moved = turned.length - text.length;
  const move = (at: number | null) => Math.max(0, (at ?? text.length) + moved);
  return { text: turned, from: move(from), to: move(to) };
}
