import type { Basis } from '../../schema/checklist.ts';
import { sheetWords } from '../../text/sheet.ts';

/**
 * What a finding rests on, as printed. A clause known only from memory is never printed as the basis of a fault; where
 * nothing else is stated, that is said instead.
 */
export function basisWords(basis: readonly Basis[]): string {
  const parts = basis.flatMap((one) => partOf(one));
  return sheetWords.findings.basis(parts.length === 0 ? [sheetWords.basis.memoryOnly] : parts);
}

function partOf(basis: Basis): string[] {
  switch (basis.kind) {
    case 'commonPractice':
      return [sheetWords.basis.commonPractice];
    case 'ourChoice':
      return [sheetWords.basis.ourChoice(basis.because)];
    case 'source': {
      if (basis.sure === 'memory') return [];
      const source = basis.sure === 'secondary' ? sheetWords.basis.secondary(basis.source) : basis.source;
      return [basis.bears === undefined ? source : sheetWords.basis.bears(source, basis.bears)];
    }
  }
}
