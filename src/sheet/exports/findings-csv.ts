import { exportWords as say } from '../../text/exports.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { LIKELIHOOD_WORDS, RISK_WORDS, SEVERITY_WORDS } from '../../text/risk.ts';
import { HOW_KNOWN, ROUTE_WORDS } from '../../text/sheet.ts';
import { verdictWords } from '../../text/verdict.ts';
import { csvText } from '../csv/csv-text.ts';
import { disclosureOf } from '../model/disclosure.ts';
import { type SheetContext, type SheetInput, sheetContext } from '../model/sheet-context.ts';
import { packName } from '../model/sheet-head.ts';
import { markOf, standingOf } from '../model/sheet-standing.ts';
import { type FindingFacts, findingFacts } from './finding-facts.ts';
import { madeFrom } from './made-from.ts';

type Column = keyof typeof say.findingColumns;
type Field = string | number | null;
type Row = Record<Column, Field>;

/**
 * The findings as one table, a row each, worst first. Every row stands alone: pack, verdict,
 * sheet and disclosure are on each. A
 * record without a finding has one row that says so.
 *
 * Units   points of Build, never rounded
 * Source  RFC 4180, by csvText
 * Check   tests/sheet/exports/findings-csv.test.ts
 */
export function findingsCsv(input: SheetInput): string {
  const context = sheetContext(input);
  const pack = packFields(context);
  const findings = findingFacts(context);
  const rows = findings.length === 0 ? [{ ...pack, ...NOTHING }] : findings.map((one) => ({ ...pack, ...fields(one) }));
  const columns = Object.keys(say.findingColumns) as Column[];
  return csvText([
    columns.map((column) => say.findingColumns[column]),
    ...rows.map((row: Row) => columns.map((column) => row[column])),
  ]);
}

type PackColumn =
  | 'pack'
  | 'sample'
  | 'checklist'
  | 'checklistVersion'
  | 'demo'
  | 'route'
  | 'allAsked'
  | 'settled'
  | 'verdict'
  | 'standing'
  | 'revision'
  | 'sha256'
  | 'date'
  | 'disclosure';
type FindingRow = Omit<Row, PackColumn>;

function packFields(context: SheetContext): Pick<Row, PackColumn> {
  const { definition, grading, record } = context;
  const { route, askedCount, itemCount, settledCount, verdict } = grading;
  const { revision, sha256, day } = madeFrom(context);
  return {
    pack: packName(context),
    sample: record.nameplate.sample ?? null,
    checklist: definition.id,
    checklistVersion: definition.version,
    demo: say.yesNo(record.demo),
    route: say.route(ROUTE_WORDS[route], askedCount, itemCount),
    allAsked: say.yesNo(askedCount === itemCount),
    settled: say.settledOf(settledCount, askedCount),
    verdict: say.verdict(verdictWords(verdict)),
    standing: markOf(standingOf(context)),
    revision,
    sha256,
    date: day,
    disclosure: disclosureOf(record).line,
  };
}

function fields(finding: FindingFacts): FindingRow {
  const { severity, likelihood, risk, evidence } = finding;
  return {
    number: finding.number,
    itemId: finding.itemId,
    title: finding.title,
    zone: finding.zone,
    grade: GRADE_WORDS[finding.grade],
    sure: finding.sure ? say.surely : say.maybe,
    sentence: finding.sentence,
    measured: finding.measured,
    overruled: finding.overruled,
    hazard: finding.hazard,
    severity: severity === null ? null : say.severity(SEVERITY_WORDS[severity].roman, SEVERITY_WORDS[severity].name),
    likelihood: likelihood === null ? null : LIKELIHOOD_WORDS[likelihood],
    risk: risk === null ? null : RISK_WORDS[risk],
    lostPoints: finding.lostPoints,
    evidence: evidence === null ? null : HOW_KNOWN[evidence],
    note: finding.note,
    photos: finding.photos.length === 0 ? null : say.photoNumbers(finding.photos.map(({ number }) => number)),
  };
}

const NOTHING: FindingRow = {
  number: null,
  itemId: null,
  title: null,
  zone: null,
  grade: null,
  sure: null,
  sentence: say.none,
  measured: null,
  overruled: null,
  hazard: null,
  severity: null,
  likelihood: null,
  risk: null,
  lostPoints: null,
  evidence: null,
  note: null,
  photos: null,
};
