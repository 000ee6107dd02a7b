import type { Likelihood, RiskLevel, Severity } from '../schema/checklist.ts';

/** Severity categories as printed, MIL-STD-882E Table I names. */
export const SEVERITY_WORDS: Readonly<Record<Severity, { roman: string; name: string; property: string }>> = {
  1: { roman: 'I', name: 'catastrophic', property: 'fire leaves the enclosure' },
  2: { roman: 'II', name: 'critical', property: 'fire or arc within the enclosure' },
  3: { roman: 'III', name: 'marginal', property: 'pack lost without fire' },
  4: { roman: 'IV', name: 'negligible', property: 'less life or function' },
};

/** Likelihood levels as printed, MIL-STD-882E Table II names. */
export const LIKELIHOOD_WORDS: Readonly<Record<Likelihood, string>> = {
  A: 'A frequent',
  B: 'B probable',
  C: 'C occasional',
  D: 'D remote',
  E: 'E improbable',
};

/** Risk levels, MIL-STD-882E Table III. */
export const RISK_WORDS: Readonly<Record<RiskLevel, string>> = {
  high: 'high',
  serious: 'serious',
  medium: 'medium',
  low: 'low',
};

/** "serious risk · severity II critical · likelihood C occasional"; null where the item carries no hazard. */
export function riskLine(finding: {
  severity: Severity | null;
  likelihood: Likelihood | null;
  risk: RiskLevel | null;
}): string | null {
  if (finding.risk === null || finding.severity === null || finding.likelihood === null) return null;
  const severity = SEVERITY_WORDS[finding.severity];
  return [
    `${RISK_WORDS[finding.risk]} risk`,
    `severity ${severity.roman} ${severity.name}`,
    `likelihood ${LIKELIHOOD_WORDS[finding.likelihood]}`,
  ].join(' · ');
}

/** How the risk scale was made: said on every sheet. */
export const RISK_SCALE_LINES = [
  'Risk is read from severity and likelihood in the matrix of MIL-STD-882E, Table III. The severity scale is tailored: ' +
    'injury as in the standard; property: I fire leaves the enclosure, II fire or arc within it, III pack lost without ' +
    'fire, IV less life or function; the worse of the two counts.',
  'Likelihood letters follow a rule of ours from the grade: weak D remote, failed C occasional, failed on a safety item ' +
    'B probable; where an item differs, the reason is printed with it.',
  'This sheet makes no claim of compliance with MIL-STD-882E.',
] as const;
