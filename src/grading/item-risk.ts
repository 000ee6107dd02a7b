import { riskLevelOf } from '../calc/tables/risk-matrix.ts';
import type { Item, Likelihood, RiskLevel, Severity } from '../schema/checklist.ts';
import type { Grade } from '../schema/grade.ts';
import { likelihoodOf } from '../schema/likelihood.ts';

export interface ItemRisk {
  hazardId: string;
  severity: Severity;
  likelihood: Likelihood;
  risk: RiskLevel;
}

/** A finding is an item graded weak or failed, whether or not it leads to a hazard. */
export function isFinding(grade: Grade): boolean {
  return grade === 'weak' || grade === 'failed';
}

/**
 * The risk an item brings at a grade; null where it brings none: no hazard, or no finding.
 *
 * Source  MIL-STD-882E, Table III; likelihood letters by the rule of likelihoodOf
 * Check   tests/grading/item-risk.test.ts
 */
export function itemRisk(item: Item, grade: Grade): ItemRisk | null {
  const { hazard: hazardId, severity } = item;
  if (hazardId === undefined || severity === undefined || !isFinding(grade)) return null;
  const likelihood = likelihoodOf(item, grade);
  if (likelihood === null) return null;
  return { hazardId, severity, likelihood, risk: riskLevelOf(severity, likelihood) };
}
