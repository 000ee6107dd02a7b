import { gradeRecord } from '../grading/grade-record.ts';
import type { Grading } from '../grading/grading.ts';
import { foldRecord } from '../record/fold-record.ts';
import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import type { Entry } from '../schema/entry.ts';
import { GRADES } from '../schema/grade.ts';
import type { PackCard } from '../schema/pack-card.ts';

export function cardFromEntries(packId: string, entries: Entry[], definition: Checklist): PackCard {
  const record = foldRecord(packId, entries);
  return cardOf(record, gradeRecord(definition, record));
}

/** The Bench card of a pack. `changedAtMs` is filled in by the store when it writes. */
export function cardOf(record: PackRecord, grading: Grading): PackCard {
  const found = grading.zones.flatMap((zone) => (zone.worst === null ? [] : [zone.worst]));
  return {
    packId: record.packId,
    demo: record.demo,
    name: record.nameplate.name ?? '',
    sample: record.nameplate.sample ?? '',
    stage: stageOf(record, grading),
    route: record.route,
    settledCount: grading.settledCount,
    askedCount: grading.askedCount,
    score: grading.score && { ...grading.score, settled: grading.settled },
    verdict: { low: grading.verdict.low, high: grading.verdict.high },
    worst: GRADES.findLast((grade) => found.includes(grade)) ?? null,
    photoId: record.photos[0]?.id ?? null,
    photoCount: record.photos.length,
    changedAtMs: 0,
    ...(record.sheet.now === 'closed' && { closed: record.sheet.revision }),
    gone: !record.here,
  };
}

/** The card of a record whose checklist is not on this phone: what it is called, and nothing judged. */
export function bareCard(record: PackRecord): PackCard {
  return {
    packId: record.packId,
    demo: record.demo,
    name: record.nameplate.name ?? '',
    sample: record.nameplate.sample ?? '',
    stage: 'nameplate',
    route: record.route,
    settledCount: 0,
    askedCount: 0,
    score: null,
    verdict: { low: 'stop', high: 'noFinding' },
    worst: null,
    photoId: record.photos[0]?.id ?? null,
    photoCount: record.photos.length,
    changedAtMs: 0,
    ...(record.sheet.now === 'closed' && { closed: record.sheet.revision }),
    gone: !record.here,
  };
}

function stageOf(record: PackRecord, grading: Grading): PackCard['stage'] {
  if (record.afterwards.fate !== undefined) return 'afterwards';
  if (grading.settled && record.state !== null) return 'sheet';
  if (record.state !== null) return record.state;
  if (record.makeSafe.length > 0) return 'makeSafe';
  if (Object.values(record.tests).some((tests) => tests.length > 0)) return 'liveTests';
  if (Object.keys(record.answers).length > 0) return 'arrival';
  return 'nameplate';
}
