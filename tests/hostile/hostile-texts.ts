/** Texts that would set `window.ran` where they were taken for anything but text; none is longer than a line. */
export const SCRIPTS = [
  '<script>window.ran=1</script>',
  '<img src=x onerror="window.ran=1">',
  '<svg onload=window.ran=1><set/></svg>',
  'javascript:window.ran=1',
  '</title><script>window.ran=1</script>',
  '&#x3c;script&#x3e;window.ran=1&#x3c;/script&#x3e;',
  '{{constructor.constructor("window.ran=1")()}}',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is one that must stay text
  '${window.ran=1}`${window.ran=1}',
  '<%= window.ran=1 %>',
  '"><iframe srcdoc="<script>parent.ran=1</script>">',
  "'); window.ran=1; //",
  '=HYPERLINK("javascript:window.ran=1")',
] as const;

/** Characters that must not stay in a text, one of each kind: controls, overrides, isolates, marks. */
export const HIDDEN = ['\u0000', '\u0007', '\u001b', '\u0085', '\u202e', '\u2066', '\ufeff', '\ufffa'] as const;

/** The value with every string in it that `mayBe` allows replaced by what `text` gives for its place. */
export function withTexts<T>(value: T, text: (place: number) => string, mayBe: (whole: T) => boolean): T {
  const whole = structuredClone(value);
  let place = 0;
  walk(whole, (owner, key, before) => {
    if (typeof before !== 'string') return;
    owner[key] = text(place);
    if (mayBe(whole)) place += 1;
    else owner[key] = before;
  });
  return whole;
}

/** Calls for every scalar inside, with its owner and its name there. */
export function walk(
  value: unknown,
  visit: (owner: Record<string, unknown>, key: string, scalar: unknown) => void,
): void {
  if (typeof value !== 'object' || value === null) return;
  const owner = value as Record<string, unknown>;
  for (const key of Object.keys(owner)) {
    if (typeof owner[key] === 'object' && owner[key] !== null) walk(owner[key], visit);
    else visit(owner, key, owner[key]);
  }
}
