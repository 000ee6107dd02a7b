/** Gauges written with noughts, as on old cable. */
const NOUGHTS: Readonly<Record<string, string>> = { '00': '2/0', '000': '3/0', '0000': '4/0' };

/** A gauge as people write it, "AWG 10", "10 awg", "00", in the form in which it is stored: "10", "2/0". */
export function tidyAwg(text: string): string {
  const plain = text.replace(/awg|gauge/gi, '').replace(/\s/g, '');
  return NOUGHTS[plain] ?? plain;
}
