/** Volume in litres of a box given in millimetres: 1 L = 1 dm³ = 10⁶ mm³, exact (SI brochure, 9th ed., table 8). */
export function boxVolumeL(box: { lengthMm: number; widthMm: number; heightMm: number }): number {
  return (box.lengthMm * box.widthMm * box.heightMm) / 1e6;
}
