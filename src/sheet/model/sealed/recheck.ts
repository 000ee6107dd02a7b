import { canonicalJson } from '../../../record/canonical-json.ts';
import type { Checklist } from '../../../schema/checklist.ts';
import type { DefinitionReference } from '../../../schema/definition-reference.ts';
import { plainText } from '../../../schema/plain-text.ts';
import type { SealedFigure } from '../../../schema/sealed-sheet.ts';
import { figurePair, figureWords } from '../../../text/recheck-lines.ts';
import { compareFigures } from './compare-figures.ts';
import { figuresOf } from './figures-of.ts';
import { lineNames } from './line-names.ts';
import { type LiftEntry, readSealed, type SealedContent, type SealedRefusal } from './read-sealed.ts';

/** One line that did not come out again, in words. `null` is a side that has no such line. */
export interface RecheckLine {
  path: string;
  words: string;
  sealed: string | null;
  recomputed: string | null;
}

/** What the file says of itself. Texts are without characters that do not show. */
export interface SealedInfo {
  packName: string;
  sample: string;
  demo: boolean;
  revision: number;
  closedAtMs: number;
  reason: string | null;
  /** SHA-256 of the sealed JSON it takes the place of. */
  after: string | null;
  appVersion: string;
  schemaVersion: number;
  checklist: SealedChecklist;
  /** What it was graded by before it was carried over; null if it never was. */
  earlier: SealedChecklist | null;
}

export interface SealedChecklist extends DefinitionReference {
  title: string;
  /** RFC 8785 text of the definition, to tell whether it is one that is known. */
  definitionText: string;
}

export interface Rechecked {
  outcome: 'rechecked';
  /** The text is exactly the canonical one, so its bytes are those whose SHA-256 was printed. */
  canonical: boolean;
  canonicalText: string;
  info: SealedInfo;
  /** Lines that came out again. */
  same: number;
  differences: RecheckLine[];
  /** Lines that come out of the entries and are not in the file. */
  missing: RecheckLine[];
  /** Lines of the file that do not come out of its entries. */
  extra: RecheckLine[];
}

export type RecheckResult = Rechecked | SealedRefusal;

/**
 * Works every figure of a sealed sheet out again from the entries and the definition in it alone, and says which lines
 * do not come out as they are sealed. Nothing of this phone's records is read, nothing is written.
 *
 * Shape   text of the file in; a refusal, or both sides of each line that differs
 * Error   numbers count as the same to 1e-9 of the larger (1e-12 near nothing); everything else exactly
 * Check   tests/sheet/sealed/recheck.test.ts
 */
export function recheck(text: string, liftEntry: LiftEntry): RecheckResult {
  const read = readSealed(text, liftEntry);
  if (read.outcome !== 'read') return read;
  const { sealed, value, definition, earlier, record } = read;
  const canonicalText = canonicalJson(value);
  const found = compareFigures(sealed.figures, figuresOf({ definition, earlier, record }));
  const names = lineNames(earlier === null ? [definition] : [definition, earlier], record.tests);
  const line = (path: string) => ({ path, words: plainText(names.path(path)) });
  const named = (path: string, figure: SealedFigure) =>
    typeof figure === 'string' ? plainText(names.ids(path, figure)) : figure;
  return {
    outcome: 'rechecked',
    canonical: canonicalText === text,
    canonicalText,
    info: infoOf(read),
    same: found.same,
    differences: found.differing.map(({ path, sealed: one, recomputed: other }) => {
      const [was, is] = figurePair(named(path, one), named(path, other));
      return { ...line(path), sealed: was, recomputed: is };
    }),
    missing: found.missing.map(({ path, recomputed }) => ({
      ...line(path),
      sealed: null,
      recomputed: figureWords(named(path, recomputed)),
    })),
    extra: found.extra.map(({ path, sealed: one }) => ({
      ...line(path),
      sealed: figureWords(named(path, one)),
      recomputed: null,
    })),
  };
}

function infoOf({ sealed, definition, earlier, record }: SealedContent): SealedInfo {
  return {
    packName: plainText(record.nameplate.name ?? ''),
    sample: plainText(record.nameplate.sample ?? ''),
    demo: record.demo,
    revision: sealed.revision,
    closedAtMs: sealed.closedAtMs,
    reason: sealed.reason === undefined ? null : plainText(sealed.reason),
    after: sealed.after ?? null,
    appVersion: plainText(sealed.appVersion),
    schemaVersion: sealed.schemaVersion,
    checklist: sealedChecklist(sealed.checklist, definition),
    earlier: earlier && sealed.earlier ? sealedChecklist(sealed.earlier.checklist, earlier) : null,
  };
}

function sealedChecklist(reference: DefinitionReference, definition: Checklist): SealedChecklist {
  return { ...reference, title: plainText(definition.title), definitionText: canonicalJson(definition) };
}
