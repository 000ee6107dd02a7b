import type { Finding, ItemResult } from '../../../grading/grading.ts';
import type { Severity } from '../../../schema/checklist.ts';
import { RANGE_DASH } from '../../../text/format-number.ts';
import { SEVERITY_WORDS } from '../../../text/risk.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow } from '../sheet.ts';
import { cell, gridRow } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

const SEVERITIES: readonly Severity[] = [1, 2, 3, 4];

/**
 * How many findings of each severity there are among the common items: sure ones, up to all that may be; beside them
 * how many items are open that may yet become one.
 */
export function findingRows(columns: readonly PackColumn[]): GridRow[] {
  const counted = columns.map(({ group, grading, definition }) => {
    const common = new Set(group.commonItemIds);
    const findings = grading.findings.filter(({ itemId }) => common.has(itemId));
    const found = new Set(findings.map(({ itemId }) => itemId));
    const open = grading.items.filter((item) => !item.settled && mayBeFinding(item) && !found.has(item.itemId));
    const openIds = new Set(open.map(({ itemId }) => itemId));
    return { findings, open: definition.items.filter(({ id }) => common.has(id) && openIds.has(id)) };
  });
  const row = (severity: Severity | null, label: string) =>
    gridRow({
      id: `severity:${severity ?? 'none'}`,
      group: say.groups.findings,
      label,
      cells: counted.map(({ findings, open }) => {
        const openCount = open.filter((item) => (item.severity ?? null) === severity).length;
        return cell(
          countText(findings.filter((one) => one.severity === severity)),
          openCount === 0 ? null : say.stillOpen(openCount),
        );
      }),
    });
  return [
    ...SEVERITIES.map((severity) => {
      const { roman, name } = SEVERITY_WORDS[severity];
      return row(severity, say.severity(roman, name));
    }),
    row(null, say.labels.noHazard),
  ];
}

function mayBeFinding({ asked, possible }: ItemResult): boolean {
  return asked && (possible.includes('weak') || possible.includes('failed'));
}

function countText(findings: readonly Finding[]): string {
  const sure = findings.filter((finding) => finding.sure).length;
  return sure === findings.length ? `${sure}` : `${sure}${RANGE_DASH}${findings.length}`;
}
