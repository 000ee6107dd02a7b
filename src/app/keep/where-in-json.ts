/**
 * Line and column, from 1, at which a text stopped being JSON, read off the engine's own message; null where it says
 * nothing of the kind. V8 names a position from 0 (newer ones line and column as well), Firefox line and column; WebKit
 * names none. V8 says only that the text ended where it was cut off: that is at its end.
 */
export function whereInJson(text: string, message: string): { line: number; column: number } | null {
  const named = /line (\d+) column (\d+)/.exec(message);
  if (named) return { line: Number(named[1]), column: Number(named[2]) };
  const position =
    /position (\d+)/.exec(message)?.[1] ?? (/end of (?:JSON )?(?:input|data)/.test(message) ? text.length : null);
  if (position === null) return null;
  const before = text.slice(0, Number(position)).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
