/** What the drawings say to a reader who cannot see them. */
export const drawingWords = {
  cutaway({ drawn, inSeries }: { drawn: number; inSeries: number | null }): string {
    if (drawn === 0) return 'Plan of the pack from above, a compartment for each part that is looked at.';
    if (inSeries === null) return `Section of a pack with ${cells(drawn)}, the number being unknown so far.`;
    if (drawn < inSeries) return `Section of the pack. ${drawn} of its ${cells(inSeries)} in series are drawn.`;
    return `Section of the pack with its ${cells(inSeries)} in series.`;
  },
  rule(figures: string): string {
    return figures === '' ? 'Scale from 0 to 100, nothing to score yet.' : `Score ${figures} on a scale from 0 to 100.`;
  },
} as const;

function cells(count: number): string {
  return count === 1 ? '1 cell' : `${count} cells`;
}
