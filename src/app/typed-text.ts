/** What stands in the box that has the focus, and in the boxes of a dialog, with its name: it may not have been given on yet. */
export function typedText(page: Document): { name: string; value: string }[] {
  const boxes = page.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('textarea, input[type="text"]');
  return [...boxes]
    .filter((box) => !box.readOnly && (box === page.activeElement || box.closest('dialog[open]') !== null))
    .map((box) => ({ name: (box.labels?.[0]?.textContent ?? box.id).replace(/[.:]$/, ''), value: box.value.trim() }))
    .filter(({ value }) => value !== '');
}
