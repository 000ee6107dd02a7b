import { LID_OFF_STATES } from '../../schema/pack-states.ts';
import { carryOverWords } from '../../text/carry-over.ts';
import { formatMoment, formatOffset } from '../../text/format-day.ts';
import { formatValue } from '../../text/format-unit.ts';
import { listOf, ROUTE_WORDS, sheetWords } from '../../text/sheet.ts';
import { methodWords, passedWords, stateWords } from '../../text/sheet-record.ts';
import type { Block, ListBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** How the pack was made safe and taken apart, by which checklist, and what kind of pack it was found to be. */
export function methodBlocks(context: SheetContext): Block[] {
  const { record } = context;
  const method = record.words.method?.trim();
  return [
    ...(method ? [{ kind: 'quote', label: methodWords.tester, text: method } satisfies Block] : []),
    ...makeSafeBlocks(context),
    ...sensorGateBlocks(context),
    ...stateBlocks(context),
    { kind: 'paragraph', text: methodWords.clock(formatOffset(context.utcOffsetMinutes)), tone: 'muted' },
    ...factBlocks(context),
    { kind: 'subhead', text: methodWords.checklist },
    { kind: 'table', rows: checklistRows(context) },
    { kind: 'paragraph', text: sheetWords.cautions.score, tone: 'plain' },
    { kind: 'paragraph', text: sheetWords.cautions.factors(context.definition.k), tone: 'plain' },
  ];
}

function makeSafeBlocks({ record, utcOffsetMinutes }: SheetContext): Block[] {
  if (record.makeSafe.length === 0) return [{ kind: 'paragraph', text: passedWords.none, tone: 'plain' }];
  const items = record.makeSafe.map((passage) => ({
    text: passedWords.passed(
      formatMoment(passage.passedAtMs, utcOffsetMinutes),
      formatValue(passage.packVoltageV, 'V'),
    ),
    detail: [
      passedWords.chargeState[passage.chargeState],
      passedWords.company[passage.company],
      passedWords.cautions(passage.acknowledged.length),
    ].join(' · '),
  }));
  return [
    { kind: 'subhead', text: passedWords.subhead },
    { kind: 'list', items },
  ];
}

/** The cautions before a sensor was made hot or cold; nothing where none was. */
function sensorGateBlocks({ record, utcOffsetMinutes }: SheetContext): Block[] {
  const items = record.tests.sensorGates.map(({ passedAtMs, acknowledged }) => ({
    text: formatMoment(passedAtMs, utcOffsetMinutes),
    detail: passedWords.cautions(acknowledged.length),
  }));
  if (items.length === 0) return [];
  return [
    { kind: 'subhead', text: passedWords.sensorSubhead },
    { kind: 'list', items },
  ];
}

function stateBlocks({ record, definition, utcOffsetMinutes }: SheetContext): Block[] {
  const titles = new Map(definition.items.map((item) => [item.id, item.title]));
  const items = LID_OFF_STATES.flatMap((state): ListBlock['items'] => {
    const entered = record.states[state];
    if (entered === undefined) return [];
    const left = entered.leftBehind.map((itemId) => titles.get(itemId) ?? itemId);
    const moment = formatMoment(entered.enteredAtMs, utcOffsetMinutes);
    return [
      {
        text: stateWords.entered(stateWords.names[state], moment),
        ...(state === 'untouched'
          ? {}
          : { detail: left.length === 0 ? stateWords.nothingLeft : stateWords.leftBehind(listOf(left)) }),
      },
    ];
  });
  if (items.length === 0) return [{ kind: 'paragraph', text: stateWords.closed, tone: 'plain' }];
  return [
    { kind: 'subhead', text: stateWords.subhead },
    { kind: 'list', items },
  ];
}

function factBlocks({ definition, record }: SheetContext): Block[] {
  if (definition.facts.length === 0) return [];
  const rows = definition.facts.map((fact) => {
    const choice = fact.choices.find(({ id }) => id === record.facts[fact.id]);
    return { label: fact.ask, value: choice?.text ?? methodWords.factOpen };
  });
  return [
    { kind: 'subhead', text: methodWords.facts },
    { kind: 'table', rows },
  ];
}

function checklistRows({ definition, definitionSha256, grading, record, appVersion }: SheetContext) {
  return [
    {
      label: methodWords.checklist,
      value: methodWords.version(definition.title, definition.id, definition.version),
      ...(definition.status === 'draft' ? { note: methodWords.draft } : {}),
    },
    { label: methodWords.hash, value: definitionSha256 },
    ...(record.carriedFrom === null
      ? []
      : [
          {
            label: carryOverWords.sheetRow,
            value: carryOverWords.sheetValue(record.carriedFrom.version, record.carriedFrom.sha256),
          },
        ]),
    {
      label: methodWords.route,
      value: methodWords.routeAsked(ROUTE_WORDS[grading.route], grading.askedCount, grading.itemCount),
    },
    { label: methodWords.app, value: appVersion },
  ];
}
