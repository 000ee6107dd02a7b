/** Kelvin at 0 °C, exact. Source: NIST SP 811 (2008) Appendix B.8. */
const K_AT_0_DEG_C = 273.15;

/** Temperature in °F. Source: NIST SP 811 Appendix B.8. Check: tests/units/conversions.test.ts */
export function degFFromDegC(tempDegC: number): number {
  return tempDegC * 1.8 + 32;
}

/** Temperature in °C from °F. Source: NIST SP 811 Appendix B.8. Check: tests/units/conversions.test.ts */
export function degCFromDegF(tempDegF: number): number {
  return (tempDegF - 32) / 1.8;
}

/** Thermodynamic temperature in K. Check: tests/units/conversions.test.ts */
export function kelvinFromDegC(tempDegC: number): number {
  return tempDegC + K_AT_0_DEG_C;
}

/** Temperature in °C from K. Check: tests/units/conversions.test.ts */
export function degCFromKelvin(tempK: number): number {
  return tempK - K_AT_0_DEG_C;
}
