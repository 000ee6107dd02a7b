/**
 * What the calculations rest on, as their own headers in calc/ say it, with how sure it is. A clause that was not opened says so.
 */
export const CALCULATION_SOURCES = {
  trapezoid: 'trapezoidal rule, NIST Digital Library of Mathematical Functions, eq. 3.5.1',
  definition: 'by definition',
  completeRun:
    'what counts as capacity: our choice (ended by low voltage; begun full: charged to the maker’s voltage until 0.05C, rested 30 min)',
  runEnd: 'how a run ended, judged by the shape of its curve: our choice, from logged LFP cells',
  rate: 'current as a multiple of the rated capacity: IEC 61960-3 and IEC 62620, not opened',
  nearRate: 'runs within ±10 % count as one rate: our choice',
  uncertainty: 'JCGM 100:2008 (GUM) 4.3.7 and 5.1.2, clause numbers not checked',
  peukert: 'Peukert’s law, as in public worked examples',
  slopeDeviation:
    'standard deviation of a slope: NIST/SEMATECH e-Handbook of Statistical Methods 4.4.3, not opened; held against NIST StRD Norris',
  overcurrent: 'kinds of trip: common practice, no source; 1 s, 60 s and 1.5 × the claim: our choice',
  withstand: 'BS 7671 434.5.2 and Table 43.1; IEC 60364-5-54 Annex A',
  melting: 'I. M. Onderdonk’s equation, holds to about 10 s',
  allowable: '33 CFR 183.425 Table 5 and note 2; other air: NEC 310.15(B), not opened',
  parallelLeads: 'parallel leads share only if equal: NEC 310.10, not opened',
  awg: 'ASTM B258, as several public tables give it',
  strandFill: 'bare strands fill 0.75 ± 0.05 of their outline: our choice, from the geometry of concentric layers',
  cableResistance: 'IEC 60228:2004 Table 3 (class 5); NEC Chapter 9 Table 8',
  conductorResistance: 'resistivity and its rise with temperature: IACS, IEC 60949',
  ohm: 'Ohm’s law',
  joule: 'Joule’s law',
  fuse: 'least: NEC 210.20(A); most: 33 CFR 183.455(c); standard sizes: NEC 240.6(A), as two public pages print it',
  interrupt:
    'interrupt rating not below the fault current; 20 kA where it is not known: ABYC E-11, as trade pages tell it',
  fault: 'Ohm’s law at 3.65 V a cell (a 202 Ah LFP cell data sheet, Rev 0, 2020)',
  boltInGates: 'times of a 32 V blade and bolt-in fuse: one fuse maker’s data sheet',
  classCGates: 'times of a class C fuse: an excerpt of UL 248-2:2019',
  robustZ: 'B. Iglewicz, D. Hoaglin, How to Detect and Handle Outliers, ASQC 1993',
  grubbs: 'NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1',
  restVoltage: 'rest voltages of LFP in a table of a public firmware, address not kept; 30 min of rest: our choice',
  twoStep: 'two-step method of IEC 61960 and EN 61951, as two application notes tell it',
  refusedResistance: 'no figure near full, below the knee or without a step of current: our choice',
  jointRise: 'Joule’s law with a constant thermal resistance',
  cellLimits: 'limits of a cell: a 202 Ah LFP cell data sheet (Rev 0, 2020); what is too late: our choice',
  sensorLimits: 'limits at a warm sensor: our choice',
  claimedLimits: 'limit: the nameplate; what is too late, 10 K beyond: our choice',
  claimedCurrent: 'limit: 1.25 × the charge current of the nameplate, too late: 2 ×: our choice',
  cellCode:
    'GB/T 34014-2017, places as an open data model of the trade gives them (traction battery code 2.0.0); the standard was not opened',
  idCard: 'size of an ID-1 card: ISO/IEC 7810:2019, 5.1, not opened; plane to plane: by definition',
} as const;
export type CalculationSource = keyof typeof CALCULATION_SOURCES;
