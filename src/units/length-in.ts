/** Millimetres in one inch, exact. Source: NIST SP 811 (2008) Appendix B.8. */
const MM_PER_IN = 25.4;

/** Length in inches. Check: tests/units/conversions.test.ts */
export function inFromMm(lengthMm: number): number {
  return lengthMm / MM_PER_IN;
}

/** Length in millimetres from inches. Check: tests/units/conversions.test.ts */
export function mmFromIn(lengthIn: number): number {
  return lengthIn * MM_PER_IN;
}
