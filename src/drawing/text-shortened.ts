import { type TextFace, textWidth } from './text-width.ts';

/** The text itself if it fits the width, else as much of it as does with "…" at its end. */
export function shortened(text: string, face: TextFace, width: number): string {
  if (textWidth(text, face) <= width) return text;
  const characters = [...text];
  while (characters.length > 0 && textWidth(`${characters.join('').trimEnd()}…`, face) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
