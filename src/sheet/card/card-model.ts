import type { Finding } from '../../grading/grading.ts';
import type { RiskLevel } from '../../schema/checklist.ts';
import type { Grade } from '../../schema/grade.ts';
import { cardWords as say } from '../../text/card.ts';
import { formatScore } from '../../text/format-number.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { RISK_WORDS } from '../../text/risk.ts';
import { sheetWords } from '../../text/sheet.ts';
import { verdictWords } from '../../text/verdict.ts';
import { words } from '../../text/words.ts';
import { disclosureOf } from '../model/disclosure.ts';
import type { SheetPhoto } from '../model/sheet.ts';
import { type SheetContext, type SheetInput, sheetContext } from '../model/sheet-context.ts';
import { packName } from '../model/sheet-head.ts';
import { markOf, standingOf } from '../model/sheet-standing.ts';

/** Our choice: more would not be read before the picture is gone. */
export const MOST_FINDINGS = 3;
/** The longest note that is taken over whole, in characters. */
const LONGEST_WORDS = 320;

export interface ChosenFinding {
  itemId: string;
  /** Null: none is shown. */
  photoId: string | null;
  words: 'sentence' | 'note';
}

export interface CardFinding {
  itemId: string;
  grade: Grade;
  title: string;
  /** "weak · serious risk". */
  standing: string;
  words: string;
  photo: SheetPhoto | null;
  /** What the numbers on the photo point at: "1 Paper strip · 2 Sense lead"; empty without. */
  legend: string;
}

export interface CardModel {
  name: string;
  /** "sample 1"; empty where it has no number. */
  sample: string;
  /** Framed marks: not closed, invented demo, draft checklist, short route. */
  marks: string[];
  verdict: { title: string; line: string };
  /** `range` is null where the score is withheld or there is nothing to score: `label` says which. */
  score: { label: string; figures: string; range: { low: number; high: number } | null; settled: boolean };
  /** Those that are shown. */
  findings: CardFinding[];
  /** All there are. */
  findingCount: number;
  disclosure: string;
  /** "One sample, as found on …". */
  caution: string;
  madeWith: string;
}

/** What the card of a pack says. Without a choice it shows the default three. */
export function cardModel(input: SheetInput, chosen?: readonly ChosenFinding[]): CardModel {
  const context = sheetContext(input);
  const { record, grading, day } = context;
  const { sample } = record.nameplate;
  return {
    name: packName(context),
    sample: sample === undefined ? '' : words.sample(sample),
    marks: marksOf(context),
    verdict: verdictWords(grading.verdict),
    score: scoreOf(context),
    findings: (chosen ?? defaultFindings(input)).slice(0, MOST_FINDINGS).flatMap((one) => findingOf(context, one)),
    findingCount: grading.findings.length,
    disclosure: disclosureOf(record).line,
    caution: sheetWords.oneSample(day),
    madeWith: say.madeWith,
  };
}

/** What must never be missed, the sheet's standing first: a closed one needs no mark. */
function marksOf(context: SheetContext): string[] {
  const { record, definition, grading } = context;
  const standing = standingOf(context);
  return [
    ...(standing.is === 'closed' || standing.is === 'reopened' ? [] : [markOf(standing)]),
    ...(record.demo ? [words.inventedDemo] : []),
    ...(definition.status === 'draft' ? [sheetWords.draftChecklist] : []),
    ...(grading.route === 'short' ? [say.shortRoute] : []),
  ];
}

const RISK_ORDER: readonly (RiskLevel | null)[] = ['high', 'serious', 'medium', 'low', null];

/** Worst risk first; at equal risk those with a photo, then as the grading orders them. */
export function defaultFindings(input: SheetInput): ChosenFinding[] {
  const context = sheetContext(input);
  const photoOf = ({ itemId }: Finding) => bestPhoto(context.photosOf(itemId), itemId);
  return context.grading.findings
    .map((finding) => ({ finding, photo: photoOf(finding) }))
    .sort(
      (a, b) =>
        RISK_ORDER.indexOf(a.finding.risk) - RISK_ORDER.indexOf(b.finding.risk) ||
        Number(b.photo !== null) - Number(a.photo !== null),
    )
    .slice(0, MOST_FINDINGS)
    .map(({ finding, photo }) => ({
      itemId: finding.itemId,
      photoId: photo?.photoId ?? null,
      words: 'sentence',
    }));
}

/** The first on which a callout points at the item, else the first. */
export function bestPhoto(photos: readonly SheetPhoto[], itemId: string): SheetPhoto | null {
  return photos.find(({ callouts }) => callouts.some((one) => one.itemId === itemId)) ?? photos[0] ?? null;
}

function scoreOf({ grading }: SheetContext): CardModel['score'] {
  const { score: range, settled, stop } = grading;
  if (stop === 'failed') return { label: say.withheld, figures: '', range: null, settled };
  if (range === null) return { label: say.nothingToScore, figures: '', range: null, settled };
  return { label: settled ? say.score : say.scoreOpen, figures: formatScore(range, settled), range, settled };
}

function findingOf(context: SheetContext, chosen: ChosenFinding): CardFinding[] {
  const finding = context.grading.findings.find(({ itemId }) => itemId === chosen.itemId);
  if (finding === undefined) return [];
  const item = context.itemOf(finding.itemId);
  const grade = GRADE_WORDS[finding.grade];
  const note = context.record.answers[finding.itemId]?.note?.trim();
  const said = (chosen.words === 'note' ? note : undefined) || item.grades[finding.grade] || '';
  const photo = context.photosOf(finding.itemId).find(({ photoId }) => photoId === chosen.photoId) ?? null;
  return [
    {
      itemId: item.id,
      grade: finding.grade,
      title: item.title,
      standing: say.line([
        finding.sure ? grade : sheetWords.findings.mayBe(grade),
        ...(finding.risk === null ? [] : [say.risk(RISK_WORDS[finding.risk])]),
      ]),
      words: cutAtWord(said),
      photo,
      legend: say.line((photo?.legend ?? []).map(({ number, text }) => say.legend(number, text))),
    },
  ];
}

function cutAtWord(text: string): string {
  const characters = [...text];
  if (characters.length <= LONGEST_WORDS) return text;
  const kept = characters.slice(0, LONGEST_WORDS - 1).join('');
  return `${kept.replace(/\s+\S*$/, '').trimEnd()}…`;
}
