import { type Agreement, LEFT_OUT } from '../../grading/agreement.ts';
import { type FinishedReading, finishedReadings } from '../../grading/finished-readings.ts';
import { GRADES } from '../../schema/grade.ts';
import { GRADE_WORDS } from '../../text/grades.ts';
import { agreementWords as say, secondReaderWords } from '../../text/second-reader.ts';
import type { Block, Figure } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

type Named = Pick<SheetContext, 'itemOf'>;

/** How far each second reader who has finished agrees with the grades of the sheet; nothing without one. */
export function secondReadingBlocks(
  context: Pick<SheetContext, 'definition' | 'record' | 'grading' | 'itemOf'>,
): Block[] {
  return finishedReadings(context).flatMap((reading) => [
    { kind: 'subhead', text: secondReaderWords.nameOf(reading.number, reading.reader.label) } satisfies Block,
    ...readingBlocks(context, reading),
  ]);
}

/** One reading: the figures, what they mean, where both differ, and what is left out of it. */
export function readingBlocks(named: Named, { agreement, reader, shownCount }: FinishedReading): Block[] {
  return [
    {
      kind: 'paragraph',
      text: say.intro({ answered: agreement.answeredCount, shown: shownCount, isBlind: reader.blind === true }),
      tone: 'plain',
    },
    ...(agreement.changedSinceCount === 0
      ? []
      : [{ kind: 'paragraph', text: say.changedSince(agreement.changedSinceCount), tone: 'plain' } satisfies Block]),
    { kind: 'figures', figures: figuresOf(agreement) },
    ...(agreement.kappa === null
      ? [{ kind: 'paragraph', text: agreement.pairCount < 2 ? say.fewer : say.allAlike, tone: 'plain' } satisfies Block]
      : []),
    { kind: 'paragraph', text: `${say.meaning} ${say.reach}`, tone: 'muted' },
    ...tableBlocks(agreement),
    ...differenceBlocks(named, agreement),
    ...leftOutBlocks(agreement),
    { kind: 'paragraph', text: say.source, tone: 'muted' },
  ];
}

function figuresOf({ kappa, pairCount, sameCount, farApartCount }: Agreement): Figure[] {
  const interval = kappa?.interval == null ? say.noInterval : say.interval(kappa.interval);
  return [
    kappa === null
      ? { label: say.kappa, value: say.notTold }
      : { label: say.kappa, value: say.figure(kappa.kappa), note: interval },
    { label: say.same, value: say.sameOf(sameCount, pairCount) },
    { label: say.farApart, value: `${farApartCount}` },
  ];
}

/** A row for each grade that the first reader gave. */
function tableBlocks({ counts, pairCount }: Agreement): Block[] {
  if (pairCount === 0) return [];
  const rows = GRADES.flatMap((first) => {
    const given = GRADES.filter((second) => counts[first][second] > 0);
    const value = given.map((second) => say.cell(counts[first][second], second)).join(' · ');
    return given.length === 0 ? [] : [{ label: GRADE_WORDS[first], value }];
  });
  return [
    { kind: 'subhead', text: say.table },
    { kind: 'table', rows },
  ];
}

function differenceBlocks({ itemOf }: Named, { differences, pairCount }: Agreement): Block[] {
  if (pairCount === 0) return [];
  if (differences.length === 0) return [{ kind: 'paragraph', text: say.noDifference, tone: 'plain' }];
  const items = differences.map(({ itemId, first, second, steps }) => ({
    text: itemOf(itemId).title,
    detail: [say.both(first, second), ...(steps > 1 ? [say.apart(steps)] : [])].join(' · '),
  }));
  return [
    { kind: 'subhead', text: say.differ },
    { kind: 'list', items },
  ];
}

function leftOutBlocks({ leftOut }: Agreement): Block[] {
  const counted = LEFT_OUT.filter((why) => leftOut[why] > 0);
  if (counted.length === 0) return [{ kind: 'paragraph', text: say.leftOutNone, tone: 'plain' }];
  return [
    { kind: 'subhead', text: say.leftOut },
    { kind: 'table', rows: counted.map((why) => ({ label: say.why[why], value: say.items(leftOut[why]) })) },
  ];
}
