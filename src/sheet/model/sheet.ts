import type { Drawing } from '../../drawing/display-list.ts';
import type { LidOutcome } from '../../drawing/lid-glyph.ts';
import type { RecordCallout } from '../../record/pack-record.ts';

/**
 * The Sheet as typed blocks in reading order: what is said, not where it stands. Screen, PDF and the other writers
 * draw the same model. Every text is final: figures are formatted and rounded here and nowhere later. The other papers
 * (side by side, owner's page, letter) are made of the same blocks and drawn by the same writers.
 */
export interface Sheet {
  /** Name and sample of the pack, for running heads and the document's title. */
  title: string;
  /** Said on every page of an invented pack; null for a real one. */
  demoMark: string | null;
  /** Said on every page: "Closed, revision 2", "not closed". */
  standingMark: string;
  language: 'en-GB';
  /** Time of the record's newest entry: the date of the document. Null of an empty record. */
  newestMs: number | null;
  utcOffsetMinutes: number;
  head: SheetHead;
  sections: Section[];
  /** Every photo of the record, by number. Each stands in exactly one block. */
  photos: SheetPhoto[];
  /** Which app and checklist made it, for the foot of a page. */
  madeBy: string;
}

export interface SheetHead {
  /** "Build-quality sheet · 24 November 2026". */
  overline: string;
  name: string;
  /** "25.6 V 100 Ah · sample 1 · bought". */
  line: string;
  /** Framed marks: how it stands, first, then what is attached, invented demo, "Short route: 30 of 72 asked". */
  marks: string[];
  /** Whether it is closed, in a sentence; a caution heads the sheet. Null on a paper that is no sheet. */
  standing: ParagraphBlock | null;
  /** "One sample, as found on …". */
  caution: string;
}

export const SECTION_IDS = [
  'result',
  'findings',
  'promised',
  'tests',
  'remedies',
  'ledger',
  'since',
  'open',
  'secondReading',
  'method',
  'afterwards',
  'words',
  'attached',
  'answers',
  'photos',
  'closing',
  'sources',
  'cautions',
] as const;
export type SectionId = (typeof SECTION_IDS)[number];

export interface Section {
  /** One of SECTION_IDS on a sheet; other papers (side by side, owner's page, letter) have their own. */
  id: string;
  title: string;
  /** False for the result, which follows the head without a heading of its own. */
  headed: boolean;
  /** On paper: across the full width, as a letter is written, without the ruled ground of a result. */
  wide?: true;
  blocks: Block[];
}

export type Block =
  | VerdictBlock
  | RuleBlock
  | FiguresBlock
  | ZonesBlock
  | FindingBlock
  | RemedyBlock
  | LedgerBlock
  | AnswersBlock
  | PhotosBlock
  | TableBlock
  | ListBlock
  | QuoteBlock
  | ParagraphBlock
  | HashBlock
  | SubheadBlock
  | ResultBlock
  | PlotBlock
  | GridBlock;

export interface VerdictBlock {
  kind: 'verdict';
  /** A stop sign was found: the score is withheld and `advice` says what to do. */
  stop: boolean;
  settled: boolean;
  title: string;
  line: string;
  advice: string[];
}

/** The straight rule with the score on it; `range` null draws the bare scale. */
export interface RuleBlock {
  kind: 'rule';
  range: { low: number; high: number };
  settled: boolean;
  figures: string;
  alt: string;
}

export interface FiguresBlock {
  kind: 'figures';
  figures: Figure[];
}
export interface Figure {
  label: string;
  value: string;
  note?: string;
}

export interface ZonesBlock {
  kind: 'zones';
  rows: ZoneRow[];
}
export interface ZoneRow {
  zoneId: string;
  title: string;
  /** Worst grade found; `notSeen` when nothing was graded, `doesNotApply` when nothing of the zone can apply. */
  glyph: LidOutcome;
  glyphWord: string;
  /** Share of the zone's credit, 0–1, at both ends; null when nothing of it can apply. */
  bar: { lowFrac: number; highFrac: number } | null;
  /** "80" or "62–88". */
  shown: string;
  /** "8 of 14 settled · 18 % of Build". */
  detail: string;
}

export interface FindingBlock {
  kind: 'finding';
  itemId: string;
  number: number;
  title: string;
  glyph: LidOutcome;
  /** "failed", "weak", or "may be failed" while the item may still not apply. */
  gradeWord: string;
  /** The observable sentence of the grade. */
  sentence: string;
  /** "wiring · serious risk · severity II critical · likelihood C occasional". */
  line: string;
  /** "seen, photos 3 and 7 · costs 2.1 points of Build". */
  evidence: string;
  /** "Hot joint: …". */
  harm: string | null;
  /** Why the likelihood differs from the rule. */
  likelihoodReason: string | null;
  basis: string;
  /** The tester's own words. */
  note: { label: string; text: string } | null;
  /** Photos that stand under this finding; those shown under an earlier one are only named in `evidence`. */
  photos: SheetPhoto[];
}

export interface RemedyBlock {
  kind: 'remedy';
  remedyId: string;
  number: number;
  text: string;
  reachWord: string;
  /** "clears: hot joint". */
  clears: string | null;
  gain: string | null;
  after: string | null;
  open: string | null;
  /** "parts: …", "work: 20 to 45 min", "cost: EUR 24.50"; as far as known. */
  takes: string[];
  /** The tester's own words. */
  note: { label: string; text: string } | null;
}

export interface LedgerBlock {
  kind: 'ledger';
  rows: LedgerRow[];
}
export interface LedgerRow {
  kind: 'total' | 'lost';
  text: string;
  /** "84.2" for a total, "−3.1" for what was lost. */
  points: string;
  /** "still open" or how the loss came about. */
  detail: string | null;
}

/** Every asked item of one zone with what became of it. */
export interface AnswersBlock {
  kind: 'answers';
  zoneTitle: string;
  rows: AnswerRow[];
}
export interface AnswerRow {
  itemId: string;
  glyph: LidOutcome;
  title: string;
  /** "weak · measured", "not seen: behind the potting". */
  outcome: string;
  marks: string[];
  note: { label: string; text: string } | null;
}

export interface PhotosBlock {
  kind: 'photos';
  photos: SheetPhoto[];
}
export interface SheetPhoto {
  photoId: string;
  number: number;
  widthPx: number;
  heightPx: number;
  /** "Photo 7 · wiring · 24 November 2026, 14:02". */
  title: string;
  /** The tester's caption and the items it belongs to. */
  caption: string | null;
  callouts: RecordCallout[];
  legend: { number: number; text: string }[];
}

export interface TableBlock {
  kind: 'table';
  rows: { label: string; value: string; note?: string }[];
}

export interface ListBlock {
  kind: 'list';
  items: { text: string; detail?: string }[];
}

/** Words of a person, set apart from the sheet's own. */
export interface QuoteBlock {
  kind: 'quote';
  label: string;
  text: string;
}

/** A SHA-256 in groups that are never broken. */
export interface HashBlock {
  kind: 'hash';
  label: string;
  groups: string[];
}

export interface ParagraphBlock {
  kind: 'paragraph';
  text: string;
  tone: 'plain' | 'muted' | 'caution';
}

export interface SubheadBlock {
  kind: 'subhead';
  text: string;
}

/** What live tests come to: one figure, what goes with it, and how it was worked out. */
export interface ResultBlock {
  kind: 'result';
  /** Unique on its sheet, and the same on every screen that shows the result. */
  id: string;
  title: string;
  /** Figure with its unit, or the words for why there is none. */
  value: string;
  /** Framed marks: "invented", "at least", "as measured". */
  marks: string[];
  rows: ResultRow[];
  /** Null where nothing was worked out: the value is as read. */
  working: Working | null;
}
export interface ResultRow {
  label: string;
  value: string;
  note?: string;
}
export interface Working {
  formula: string;
  inputs: { label: string; value: string }[];
  uncertainty?: string;
  sources: string[];
}

/** A drawing of `drawing/`, as wide as the column. Its `alt` says what it shows. */
export interface PlotBlock {
  kind: 'plot';
  drawing: Drawing;
  caption: string;
}

/** Packs beside one another: a column a pack, a row a matter. */
export interface GridBlock {
  kind: 'grid';
  columns: { title: string; mark: string | null }[];
  rows: GridRow[];
}
export interface GridRow {
  /** Unique in its grid. */
  id: string;
  /** Rows that follow one another under one heading; null stands under none. */
  group: string | null;
  label: string;
  /** One a column. */
  cells: { text: string; note: string | null; glyph: LidOutcome | null }[];
  /** What the cells show is not all the same. */
  differs: boolean;
}
