/**
 * Words as one line of a text file: no controls, no line ends of any kind, no halves of characters, no arrow that a
 * reader of cues would take for a timing line; runs of white space are one space.
 */
export function inOneLine(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: controls are what is taken out
      .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff]+/g, ' ')
      .replace(/\p{Cs}/gu, '\ufffd')
      .replace(/-->/g, '\u2192')
      .replace(/\s+/g, ' ')
      .trim()
  );
}
