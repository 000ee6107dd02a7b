import type { CellCode } from '../../../calc/cell-code.ts';
import { cellMarkResults } from '../../../grading/live-tests/cell-mark-results.ts';
import type { CellMarkResult } from '../../../grading/live-tests/results.ts';
import { formatDay } from '../../../text/format-day.ts';
import { cellMarkWords as say } from '../../../text/live-tests/results/cell-mark.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Codes on cells taken apart, the raw characters beside any date. One that reads well is no proof. */
export function cellMarkBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(cellMarkResults(context), id, ({ mark }) => mark.id).map((result) => markBlock(result, context)),
  );
}

type Decoded = Extract<CellCode, { ok: true }>;

function markBlock({ mark, code }: CellMarkResult, context: LiveContext): ResultBlock {
  const cell = mark.cellNumber === undefined ? null : say.cell(mark.cellNumber);
  return {
    kind: 'result',
    id: `cell-mark-${mark.id}`,
    title: testTitle(testName(say.one, context.tests.cellMarks, mark.id), {}, cell),
    value: code.ok ? say.decoded(code.maker, dateWords(code.date)) : say.refused,
    marks: [],
    rows: [
      ...row(say.labels.code, mark.text.trim()),
      ...row(say.labels.read, say.read[mark.read], mark.symbology?.trim()),
      ...(code.ok ? decodedRows(code) : row(say.labels.why, say.because[code.because], whereWords(code))),
      ...closingRows(mark, context),
    ],
    working: code.ok ? workingOf({ formulas: [say.formulas[code.form]], inputs: [], sources: ['cellCode'] }) : null,
  };
}

function decodedRows(code: Decoded): ResultRow[] {
  const letter = say.letter(code.chemistryLetter);
  return [
    ...row(say.labels.date, dateWords(code.date), dateNote(code.date)),
    ...row(say.labels.maker, code.maker),
    ...row(say.labels.product, say.products[code.product]),
    ...row(
      say.labels.chemistry,
      code.chemistry === null ? letter : say.chemistries[code.chemistry],
      code.chemistry === null ? say.chemistryUnknown : letter,
    ),
    ...row(say.labels.specification, code.specification),
    ...row(say.labels.traceability, code.traceability),
    ...row(say.labels.serial, code.serial),
    ...row(say.labels.form, say.forms[code.form]),
    ...row(say.labels.proof, say.noProof),
  ];
}

function dateWords(date: Decoded['date']): string {
  if ('invalid' in date) return say.dateInvalid;
  const two = (part: number) => String(part).padStart(2, '0');
  return formatDay(`${date.year}-${two(date.month)}-${two(date.day)}`);
}

function dateNote(date: Decoded['date']): string {
  const raw = say.raw(date.raw);
  return 'invalid' in date ? testWords.listed([raw, say.invalid[date.invalid]]) : raw;
}

function whereWords({ at, found, because }: Extract<CellCode, { ok: false }>): string | null {
  if (found === undefined) return null;
  if (because === 'wrongLength') return say.length(found);
  return at === undefined ? null : say.at(at, found);
}
