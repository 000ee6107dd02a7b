import { MOST_PACKS } from '../../../grading/side-by-side/side-by-side.ts';
import { stampMs } from '../../../record/stamp-ms.ts';
import { formatDay, localDay } from '../../../text/format-day.ts';
import { RISK_SCALE_LINES } from '../../../text/risk.ts';
import { sheetWords } from '../../../text/sheet.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import { disclosureOf } from '../disclosure.ts';
import type { Block, GridBlock, Section, Sheet } from '../sheet.ts';
import { basisBlocks } from './basis-blocks.ts';
import { comparisonPlots } from './comparison-plots.ts';
import { costRows } from './cost-rows.ts';
import { findingRows } from './finding-rows.ts';
import { firmnessBlocks } from './firmness-blocks.ts';
import { howRows, protectionRows } from './how-rows.ts';
import { type PackColumn, packColumns } from './pack-columns.ts';
import type { SideBySideInput } from './side-by-side-input.ts';
import { testFigureRows } from './test-figure-rows.ts';
import { verdictRows } from './verdict-rows.ts';
import { zoneRows } from './zone-rows.ts';

/**
 * Packs side by side as a paper of the same blocks as the Sheet, so that the same writers draw it. Columns stand by
 * group and rank.
 *
 * Shape   one to eight packs with the result of `sideBySide`; typed blocks out. Same input, same paper.
 * Throws  RangeError if there is no pack or more than eight, or if the parts of the input do not belong together.
 * Check   tests/sheet/side-by-side/make-side-by-side.test.ts
 */
export function makeSideBySide(input: SideBySideInput): Sheet {
  const { compared, result, firmness, units, appVersion, utcOffsetMinutes } = input;
  if (compared.length < 1 || compared.length > MOST_PACKS) {
    throw new RangeError(`makeSideBySide: needs 1 to ${MOST_PACKS} packs, got ${compared.length}`);
  }
  const columns = packColumns(input);
  const newest = compared.flatMap(({ record }) => (record.sheetAt === null ? [] : [stampMs(record.sheetAt)]));
  const newestMs = newest.length === 0 ? null : Math.max(...newest);
  const demos = compared.filter(({ record }) => record.demo).length;
  const demoMark = demos === 0 ? null : say.demo(demos, compared.length);
  const name = say.name(columns.map((column) => column.name));
  return {
    title: say.runningTitle(name),
    demoMark,
    standingMark: say.count(columns.length),
    language: 'en-GB',
    newestMs,
    utcOffsetMinutes,
    head: {
      overline: say.overline(newestMs === null ? null : formatDay(localDay(newestMs, utcOffsetMinutes))),
      name,
      line: say.count(columns.length),
      marks: demoMark === null ? [] : [demoMark],
      standing: null,
      caution: say.caution(columns.length),
    },
    sections: [
      { ...section('result', [gridOf(columns, units)]), headed: false },
      section('firmness', firmnessBlocks(columns, result.groups, firmness)),
      section('basis', basisBlocks(columns, result)),
      section('plots', comparisonPlots(columns)),
      section('disclosure', disclosureBlocks(columns)),
      section('cautions', cautionBlocks()),
    ].filter(({ blocks }) => blocks.length > 0),
    photos: [],
    madeBy: say.madeBy(appVersion),
  };
}

function section(id: keyof typeof say.sections, blocks: Block[]): Section {
  return { id, title: say.sections[id], headed: true, blocks };
}

function gridOf(columns: readonly PackColumn[], units: SideBySideInput['units']): GridBlock {
  return {
    kind: 'grid',
    columns: columns.map(({ name, mark }) => ({ title: name, mark })),
    rows: [
      ...verdictRows(columns),
      ...zoneRows(columns),
      ...findingRows(columns),
      ...testFigureRows(columns, units),
      ...costRows(columns),
      ...protectionRows(columns),
      ...howRows(columns),
    ],
  };
}

function disclosureBlocks(columns: readonly PackColumn[]): Block[] {
  const items = columns.map(({ name, record }) => ({ text: name, detail: disclosureOf(record).line }));
  return [{ kind: 'list', items }];
}

function cautionBlocks(): Block[] {
  const { score, cost, remedies } = say.cautions;
  const texts = [score, cost, remedies, ...RISK_SCALE_LINES, sheetWords.cautions.work];
  return [{ kind: 'list', items: texts.map((text) => ({ text })) }];
}
