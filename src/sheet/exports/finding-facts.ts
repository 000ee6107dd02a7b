import type { Finding } from '../../grading/grading.ts';
import type { Evidence } from '../../schema/grade.ts';
import { foundWithReadings } from '../model/measured-words.ts';
import type { SheetContext } from '../model/sheet-context.ts';

/** What every file says of one finding, before it is put into columns or fields. */
export interface FindingFacts extends Omit<Finding, 'lostPoints'> {
  /** As on the sheet: worst first, from 1. */
  number: number;
  title: string;
  zone: string;
  /** The observable sentence of the grade. */
  sentence: string;
  hazard: string | null;
  harm: string | null;
  /** Null where the score is withheld. */
  lostPoints: number | null;
  evidence: Evidence | null;
  /** What was measured or derived, in words; null where nothing was. */
  measured: string | null;
  /** Why a person's grade counts against it. */
  overruled: string | null;
  note: string | null;
  photos: { number: number; photoId: string }[];
}

/** The findings of a record, worst first. Throws RangeError where grading and definition do not belong together. */
export function findingFacts(context: SheetContext): FindingFacts[] {
  return context.grading.findings.map((finding, place) => {
    const item = context.itemOf(finding.itemId);
    const result = context.resultOf(finding.itemId);
    const answer = context.record.answers[finding.itemId];
    const hazard = finding.hazardId === null ? null : context.hazardOf(finding.hazardId);
    return {
      ...finding,
      number: place + 1,
      title: item.title,
      zone: context.zoneOf(finding.zoneId).title,
      sentence: item.grades[finding.grade] ?? item.title,
      hazard: hazard?.title ?? null,
      harm: hazard?.harm ?? null,
      lostPoints: context.grading.stop === 'failed' ? null : finding.lostPoints,
      evidence: result.evidence,
      measured: foundWithReadings(item, result.measured, answer),
      overruled: result.measured?.overrules ?? null,
      note: answer?.note?.trim() || null,
      photos: context.photosOf(finding.itemId).map(({ number, photoId }) => ({ number, photoId })),
    };
  });
}
