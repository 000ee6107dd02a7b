import { LFP_PLAUSIBILITY } from '../../calc/tables/lfp-plausibility.ts';
import { type FuseAdvice, type FuseQuestion, terminalFuseAdvice } from '../../calc/terminal-fuse-advice.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import { faultResult } from './fault-result.ts';
import { mainLeadsAllowableA } from './lead-result.ts';
import type { FuseResult } from './results.ts';

/** The fuse to put at the pack's terminal, and what it rests on. The leads count at the least they may be allowed. */
export function fuseResult(tested: Tested): FuseResult {
  const { nameplate } = tested;
  const question = {
    continuousCurrentA: nameplate.continuousCurrentA ?? null,
    leadAllowableA: mainLeadsAllowableA(tested)?.low ?? null,
    nominalVoltageV: nameplate.nominalVoltageV ?? null,
    fullVoltageV: fullVoltageV(nameplate),
    fault: faultResult(tested),
  };
  return { advice: adviceFor(question), ...question };
}

function fullVoltageV({ chargeVoltageV, cellsInSeries }: Nameplate): number | null {
  if (chargeVoltageV !== undefined) return chargeVoltageV;
  return cellsInSeries === undefined ? null : cellsInSeries * LFP_PLAUSIBILITY.cellChargeV;
}

/** Leads in air as warm as their insulation may get bear nothing, so no fuse fits; the advice itself takes only more. */
function adviceFor(question: FuseQuestion): FuseAdvice {
  if (question.leadAllowableA !== 0) return terminalFuseAdvice(question);
  const nearly = terminalFuseAdvice({ ...question, leadAllowableA: Number.EPSILON });
  return nearly.fits === false ? { ...nearly, mostA: 0 } : nearly;
}
