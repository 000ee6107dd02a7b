/** Kilograms in one avoirdupois pound, exact. Source: NIST SP 811 (2008) Appendix B.8. */
const KG_PER_LB = 0.45359237;

/** Mass in avoirdupois pounds. Check: tests/units/conversions.test.ts */
export function lbFromKg(massKg: number): number {
  return massKg / KG_PER_LB;
}

/** Mass in kilograms from avoirdupois pounds. Check: tests/units/conversions.test.ts */
export function kgFromLb(massLb: number): number {
  return massLb * KG_PER_LB;
}
