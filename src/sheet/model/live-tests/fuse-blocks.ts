import { fuseResult } from '../../../grading/live-tests/fuse-result.ts';
import type { FuseResult } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { withUnit } from '../../../text/format-unit.ts';
import { figureIn } from '../../../text/live-tests/results/figures.ts';
import { fuseWords as say } from '../../../text/live-tests/results/fuse.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow, Working } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { figureRow, row } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** From this nominal voltage the fuse must not exceed its leads. The same as in calc/terminal-fuse-advice.ts. */
const STRICTER_FROM_V = 50;

/** Which fuse at the terminal fits the pack and its leads, or why none does. Nothing before a lead or a trip is noted. */
export function fuseBlocks(context: LiveContext): Block[] {
  const { trips, leads } = context.tests;
  if (trips.length === 0 && leads.every(({ place }) => place !== 'main')) return [];
  return workedOut(say.matter, () => [fuseBlock(fuseResult(context), context)]);
}

/** What the advice comes to in one sentence, for the remedy that fits the fuse; null while it cannot be told. */
export function fuseSentence(context: LiveContext): string | null {
  const { advice } = fuseResult(context);
  if (advice.fits === null) return null;
  if (!advice.fits) return say.noneInRemedy;
  return say.inRemedy(amperes(advice.ratingA), volts(advice.dcVoltageV), interruptWords(advice));
}

function fuseBlock(result: FuseResult, context: LiveContext): ResultBlock {
  const { advice, fault } = result;
  const isStricter = (result.nominalVoltageV ?? 0) >= STRICTER_FROM_V;
  return {
    kind: 'result',
    id: 'fuse',
    title: say.title,
    value: shownValue(advice),
    marks: [],
    rows: [...adviceRows(advice, isStricter), ...faultRows(fault), ...row(say.labels.caution, say.caution)],
    working:
      advice.fits === null
        ? null
        : workingOf({
            formulas: [
              isStricter ? say.formulaFrom50 : say.formulaUnder50,
              ...(fault === null ? [] : [say.formulaFault]),
            ],
            inputs: inputsOf(result, context),
            sources: ['fuse', 'interrupt', 'allowable', ...(fault === null ? [] : (['fault'] as const))],
          }),
  };
}

function shownValue(advice: FuseResult['advice']): string {
  if (advice.fits === null) return say.missing;
  return advice.fits ? say.fits(amperes(advice.ratingA), volts(advice.dcVoltageV)) : say.none;
}

function adviceRows(advice: FuseResult['advice'], isStricter: boolean): ResultRow[] {
  if (advice.fits === null) {
    return row(say.labels.needed, testWords.sentenced(advice.missing.map((name) => say.needs[name])));
  }
  const limits = [
    ...row(say.labels.least, amperes(advice.leastA), say.leastNote),
    ...row(say.labels.most, amperes(advice.mostA), say.mostNote(isStricter)),
  ];
  if (!advice.fits) return [...limits, ...row(say.labels.why, say.why(amperes(advice.leastA), amperes(advice.mostA)))];
  return [...limits, ...row(say.labels.voltage, say.orMore(volts(advice.dcVoltageV))), ...interruptRow(advice)];
}

type Fits = Extract<FuseResult['advice'], { fits: true }>;

function interruptRow(advice: Fits): ResultRow[] {
  const value = interruptWords(advice);
  return advice.interruptAtLeast20kA
    ? row(say.labels.interrupt, value, say.interruptUnknown)
    : row(say.labels.interrupt, value);
}

function interruptWords({ interruptA, interruptAtLeast20kA }: Fits): string {
  if (interruptA === null) return say.interrupt20kA;
  return interruptAtLeast20kA ? say.interruptAbove(lowerKiloamperes(interruptA)) : say.orMore(kiloamperes(interruptA));
}

function faultRows(fault: FuseResult['fault']): ResultRow[] {
  if (fault === null) return [];
  const isUpper = fault.bound === 'upper';
  const shown = isUpper ? kiloamperes(fault.currentA) : lowerKiloamperes(fault.currentA);
  return row(say.labels.fault, shown, isUpper ? say.upper : say.lower);
}

function inputsOf(result: FuseResult, { nameplate }: LiveContext): Working['inputs'] {
  const { inputs, fullFrom } = say;
  const from = nameplate.chargeVoltageV === undefined ? fullFrom.cells : fullFrom.nameplate;
  return [
    ...figureRow(inputs.continuous, result.continuousCurrentA, { say: amperes }),
    ...figureRow(inputs.lead, result.leadAllowableA, { say: amperes }),
    ...figureRow(inputs.nominal, result.nominalVoltageV, { say: volts }),
    ...figureRow(inputs.full, result.fullVoltageV, { say: (v) => testWords.listed([volts(v), from]) }),
  ].map(({ label, value }) => ({ label, value }));
}

function amperes(currentA: number): string {
  return figureIn(currentA, 'A');
}

function volts(voltageV: number): string {
  return figureIn(voltageV, 'V');
}

/** Rounded up to a tenth: an interrupt rating must not come out below. */
function kiloamperes(currentA: number): string {
  return withUnit(formatFixed(Math.ceil(currentA / 100) / 10, 1), 'kA');
}

/** Rounded down: a lower estimate must not come out above. */
function lowerKiloamperes(currentA: number): string {
  return withUnit(formatFixed(Math.floor(currentA / 100) / 10, 1), 'kA');
}
