import type { Finding } from '../../../grading/grading.ts';
import type { Severity } from '../../../schema/checklist.ts';
import { RANGE_DASH } from '../../../text/format-number.ts';
import { SEVERITY_WORDS } from '../../../text/risk.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow } from '../sheet.ts';
import { cell, gridRow } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

const SEVERITIES: readonly Severity[] = [1, 2, 3, 4];

/** How many findings of each severity there are among the common items: sure ones, up to all that may be. */
export function findingRows(columns: readonly PackColumn[]): GridRow[] {
  const counted = columns.map(({ group, grading }) => {
    const common = new Set(group.commonItemIds);
    return grading.findings.filter(({ itemId }) => common.has(itemId));
  });
  const row = (severity: Severity | null, label: string) =>
    gridRow({
      id: `severity:${severity ?? 'none'}`,
      group: say.groups.findings,
      label,
      cells: counted.map((findings) => cell(countText(findings.filter((one) => one.severity === severity)))),
    });
  return [
    ...SEVERITIES.map((severity) => {
      const { roman, name } = SEVERITY_WORDS[severity];
      return row(severity, say.severity(roman, name));
    }),
    row(null, say.labels.noHazard),
  ];
}

function countText(findings: readonly Finding[]): string {
  const sure = findings.filter((finding) => finding.sure).length;
  return sure === findings.length ? `${sure}` : `${sure}${RANGE_DASH}${findings.length}`;
}
