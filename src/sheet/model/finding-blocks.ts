import type { Finding } from '../../grading/grading.ts';
import { formatFixed } from '../../text/format-number.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { riskLine } from '../../text/risk.ts';
import { HOW_KNOWN, sheetWords } from '../../text/sheet.ts';
import { basisWords } from './basis-words.ts';
import { foundWithReadings, gradeStanding } from './measured-words.ts';
import type { Block, FindingBlock, SheetPhoto } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** The findings, worst first, each with the photos that were not shown under an earlier one. */
export function findingBlocks(context: SheetContext): Block[] {
  const { findings } = context.grading;
  if (findings.length === 0) return [{ kind: 'paragraph', text: sheetWords.findings.none, tone: 'plain' }];
  const shown = new Set<string>();
  return findings.map((finding, place) => {
    const linked = context.photosOf(finding.itemId);
    const photos = linked.filter(({ photoId }) => !shown.has(photoId));
    for (const { photoId } of photos) shown.add(photoId);
    return findingBlock(context, { finding, number: place + 1, linked, photos });
  });
}

interface Placed {
  finding: Finding;
  number: number;
  linked: SheetPhoto[];
  photos: SheetPhoto[];
}

function findingBlock(context: SheetContext, { finding, number, linked, photos }: Placed): FindingBlock {
  const item = context.itemOf(finding.itemId);
  const hazard = finding.hazardId === null ? null : context.hazardOf(finding.hazardId);
  const grade = GRADE_WORDS[finding.grade];
  const because = finding.grade === 'sound' ? undefined : likelihoodReason(item, finding.grade);
  const note = context.record.answers[finding.itemId]?.note?.trim();
  return {
    kind: 'finding',
    itemId: finding.itemId,
    number,
    title: item.title,
    glyph: finding.grade,
    gradeWord: finding.sure ? grade : sheetWords.findings.mayBe(grade),
    sentence: item.grades[finding.grade] ?? item.title,
    line: [context.zoneOf(finding.zoneId).title, riskLine(finding) ?? sheetWords.findings.noRisk].join(' · '),
    evidence: evidenceLine(context, finding, linked),
    harm: hazard === null ? null : `${hazard.title}: ${hazard.harm}`,
    likelihoodReason: because === undefined ? null : sheetWords.findings.likelihoodReason(because),
    basis: basisWords(item.basis),
    note: note ? { label: sheetWords.findings.note, text: note } : null,
    photos,
  };
}

function likelihoodReason(
  item: ReturnType<SheetContext['itemOf']>,
  grade: 'passable' | 'weak' | 'failed',
): string | undefined {
  return item.likelihood?.[grade] === undefined ? undefined : item.likelihood.because;
}

function evidenceLine(context: SheetContext, finding: Finding, linked: SheetPhoto[]): string {
  const result = context.resultOf(finding.itemId);
  const standing = gradeStanding(result);
  const found = foundWithReadings(
    context.itemOf(finding.itemId),
    result.measured,
    context.record.answers[finding.itemId],
  );
  const words = sheetWords.findings;
  const tenths = context.points?.itemTenths.get(finding.itemId);
  return [
    ...(standing === null && result.evidence !== null ? [HOW_KNOWN[result.evidence]] : []),
    ...(standing === null ? [] : [standing]),
    ...(found === null ? [] : [found]),
    linked.length === 0 ? words.noPhoto : words.photos(linked.map(({ number }) => number)),
    ...(finding.sure ? [] : [words.open]),
    ...(tenths === undefined ? [] : [words.cost(formatFixed(tenths / 10, 1))]),
  ].join(' · ');
}
