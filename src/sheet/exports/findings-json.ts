import type { Grading, ZoneResult } from '../../grading/grading.ts';
import {
  FINDINGS_FORMAT,
  FINDINGS_FORMAT_VERSION,
  FINDINGS_SCHEMA_NAME,
  type FindingsFile,
} from '../../schema/findings-file.ts';
import { sheetWords } from '../../text/sheet.ts';
import { verdictWords } from '../../text/verdict.ts';
import { disclosureOf } from '../model/disclosure.ts';
import type { SheetPhoto } from '../model/sheet.ts';
import { type SheetContext, type SheetInput, sheetContext } from '../model/sheet-context.ts';
import { type FindingFacts, findingFacts } from './finding-facts.ts';
import { liveFigures } from './live-figures.ts';
import { madeFrom } from './made-from.ts';

/**
 * A pack, its verdict and its findings for other programs, in the shape of `public/findings.schema.json`.
 *
 * Units   in the names of the fields; never rounded
 * Check   tests/sheet/exports/findings-json.test.ts
 */
export function findingsFile(input: SheetInput): FindingsFile {
  const context = sheetContext(input);
  const { record, grading, day } = context;
  const { standing, revision, sha256, day: date } = madeFrom(context);
  const { obtained, commission, line } = disclosureOf(record);
  return {
    $schema: FINDINGS_SCHEMA_NAME,
    format: FINDINGS_FORMAT,
    formatVersion: FINDINGS_FORMAT_VERSION,
    madeWith: madeWith(context),
    disclosure: { obtained, commission, invented: record.demo, line },
    caution: sheetWords.oneSample(day),
    sheet: { standing, revision, sha256, date },
    pack: packFacts(context),
    ...judgement(grading),
    zones: grading.zones.map((zone) => zoneFacts(zone, context)),
    findings: findingFacts(context).map(findingEntry),
    photos: context.photos.map(photoEntry),
    liveTests: liveFigures(record),
  };
}

/** The same as a file is written. */
export function findingsJsonText(input: SheetInput): string {
  return `${JSON.stringify(findingsFile(input), null, 2)}\n`;
}

function madeWith({ definition, definitionSha256, appVersion }: SheetContext): FindingsFile['madeWith'] {
  const { id, version, title, status } = definition;
  return { app: 'Underlid', appVersion, checklist: { id, version, title, status, sha256: definitionSha256 } };
}

function packFacts({ record }: SheetContext): FindingsFile['pack'] {
  const { name, sample, maker, model, serial, revision, nominalVoltageV, ratedCapacityAh } = record.nameplate;
  return {
    packId: record.packId,
    name: name ?? null,
    sample: sample ?? null,
    maker: maker ?? null,
    model: model ?? null,
    serial: serial ?? null,
    revision: revision ?? null,
    nominalVoltageV: nominalVoltageV ?? null,
    ratedCapacityAh: ratedCapacityAh ?? null,
  };
}

/** With a stop sign found, everything the score is made of is withheld, as on the sheet. */
function judgement(grading: Grading) {
  const { route, askedCount, itemCount, settledCount, verdict, stop, settled, settledShareFrac } = grading;
  const isWithheld = stop === 'failed';
  const { title, line } = verdictWords(verdict);
  return {
    route,
    askedCount,
    itemCount,
    settledCount,
    verdict: { low: verdict.low, high: verdict.high, settled: verdict.settled, title, line },
    stop,
    settled,
    settledShareFrac,
    score: isWithheld ? null : grading.score,
    build: isWithheld ? null : grading.build,
    factor: isWithheld || grading.build === null ? null : grading.factor,
    after: isWithheld ? { outside: null, workshop: null } : grading.after,
  };
}

function zoneFacts(zone: ZoneResult, { zoneOf }: SheetContext): FindingsFile['zones'][number] {
  const { zoneId, weightFrac, q, askedCount, settledCount, worst } = zone;
  return {
    id: zoneId,
    title: zoneOf(zoneId).title,
    weightFrac,
    creditFrac: q,
    askedCount,
    settledCount,
    worstGrade: worst,
  };
}

function findingEntry(finding: FindingFacts): FindingsFile['findings'][number] {
  const { number, itemId, title, zoneId, grade, sure, sentence, measured, overruled } = finding;
  const { hazardId, hazard, harm, severity, likelihood, risk, lostPoints, evidence, note, photos } = finding;
  return {
    number,
    itemId,
    title,
    zoneId,
    grade,
    sure,
    sentence,
    measured,
    overruled,
    hazard: hazardId === null || hazard === null || harm === null ? null : { id: hazardId, title: hazard, harm },
    severity,
    likelihood,
    risk,
    lostPoints,
    evidence,
    note,
    photos: photos.map((photo) => ({ number: photo.number, sha256: photo.photoId })),
  };
}

function photoEntry({ photoId, number, title, caption, widthPx, heightPx, callouts }: SheetPhoto) {
  return {
    number,
    sha256: photoId,
    title,
    caption,
    widthPx,
    heightPx,
    callouts: callouts.flatMap(({ id, number: leader, kind, text, itemId, points }) =>
      kind === 'cover'
        ? []
        : [
            {
              id,
              number: leader,
              kind,
              text: text ?? null,
              itemId: itemId ?? null,
              points: points.map(([x, y]) => [x, y]),
            },
          ],
    ),
  };
}
