import { formatValue } from '../../text/format-unit.ts';
import { sheetWords } from '../../text/sheet.ts';
import { OBTAINED_WORDS } from '../../text/sheet-record.ts';
import { words } from '../../text/words.ts';
import type { SheetHead } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';
import { standingMarks, standingOf, standingParagraph } from './sheet-standing.ts';

/** Name, sample and date of the sheet, with the marks that must never be missed. */
export function sheetHead(context: SheetContext): SheetHead {
  const { record, grading, definition, day } = context;
  const standing = standingOf(context);
  const { nominalVoltageV, ratedCapacityAh, sample, obtained } = record.nameplate;
  const rated = [
    ...(nominalVoltageV === undefined ? [] : [formatValue(nominalVoltageV, 'V')]),
    ...(ratedCapacityAh === undefined ? [] : [formatValue(ratedCapacityAh, 'Ah')]),
  ].join(' ');
  const line = [
    rated,
    sample === undefined ? '' : words.sample(sample),
    obtained === undefined ? '' : OBTAINED_WORDS[obtained],
  ];
  return {
    overline: sheetWords.overline(day),
    name: packName(context),
    line: line.filter((part) => part !== '').join(' · '),
    marks: [
      ...standingMarks(standing, context),
      ...(record.demo ? [words.inventedDemo] : []),
      ...(definition.status === 'draft' ? [sheetWords.draftChecklist] : []),
      ...(grading.route === 'short' ? [sheetWords.shortRoute(grading.askedCount, grading.itemCount)] : []),
    ],
    standing: standingParagraph(standing, context),
    caution: sheetWords.oneSample(day),
  };
}

/** The pack's name, else its maker and model, else that it has none. */
export function packName({ record }: Pick<SheetContext, 'record'>): string {
  const { name, maker, model } = record.nameplate;
  return name ?? ([maker, model].filter((part) => part !== undefined).join(' ') || words.unnamed);
}
