import type { ItemResult } from '../../grading/grading.ts';
import { sheetWords } from '../../text/sheet.ts';
import { foundWithReadings, gradeStanding } from './measured-words.ts';
import type { Block, ListBlock } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

type Entry = ListBlock['items'][number];

/** Everything a reader must not take as looked at: not seen, open, told, answered at one stroke, said not to apply. */
export function openBlocks(context: SheetContext): Block[] {
  const words = sheetWords.open;
  const asked = context.grading.items.filter(({ because }) => because !== 'notAsked');
  const because = (why: ItemResult['because']) => asked.filter((result) => result.because === why);
  const unlooked = asked.filter((result) => result.unlooked);
  const blocks = [
    ...group(
      words.notSeen,
      because('notSeen').map((result) => withReason(context, result)),
    ),
    ...group(
      words.errors,
      because('error').map((result) => withReason(context, result)),
    ),
    ...group(
      words.unanswered,
      because('unanswered').map((result) => named(context, result)),
    ),
    ...group(
      words.inPart,
      because('measured')
        .filter(({ settled }) => !settled)
        .map((result) => withFound(context, result)),
    ),
    ...group(
      words.overruled,
      asked.filter(({ measured }) => measured?.overrules != null).map((result) => withFound(context, result)),
    ),
    ...group(
      words.factOpen,
      openByFact(asked).map((result) => named(context, result)),
    ),
    ...group(words.facts, openFacts(context)),
    ...group(
      words.told,
      asked.filter(({ evidence }) => evidence === 'told').map((result) => named(context, result)),
    ),
    ...group(
      words.unlooked(unlooked.length),
      unlooked.map((result) => named(context, result)),
    ),
    ...group(
      words.notApplicable,
      because('doesNotApply').map((result) => withReason(context, result)),
    ),
    ...setAside(context),
  ];
  return blocks.length === 0 ? [{ kind: 'paragraph', text: words.nothing, tone: 'plain' }] : blocks;
}

/** Answered or not, these stay open only because a fact about the pack is not known. */
function openByFact(asked: readonly ItemResult[]): ItemResult[] {
  return asked.filter((result) => result.because === 'factOpen' && !result.settled);
}

function openFacts({ definition, record, grading }: SheetContext): Entry[] {
  const conditions = new Set(
    definition.items.flatMap((item) => {
      const asked = grading.items.find(({ itemId }) => itemId === item.id)?.because !== 'notAsked';
      return asked && item.onlyIf !== undefined ? [item.onlyIf.fact] : [];
    }),
  );
  return definition.facts
    .filter((fact) => conditions.has(fact.id) && record.facts[fact.id] === undefined)
    .map((fact) => ({ text: fact.ask }));
}

function group(heading: string, items: Entry[]): Block[] {
  if (items.length === 0) return [];
  return [
    { kind: 'subhead', text: heading },
    { kind: 'list', items },
  ];
}

function named({ itemOf, zoneOf }: SheetContext, { itemId, zoneId }: ItemResult): Entry {
  return { text: itemOf(itemId).title, detail: zoneOf(zoneId).title };
}

function withFound(context: SheetContext, result: ItemResult): Entry {
  const item = context.itemOf(result.itemId);
  const found = foundWithReadings(item, result.measured, context.record.answers[result.itemId]);
  const standing = result.measured?.overrules == null ? null : gradeStanding(result);
  return { text: item.title, detail: [found, standing].filter((part) => part !== null).join(' · ') };
}

function withReason(context: SheetContext, result: ItemResult): Entry {
  const answer = context.record.answers[result.itemId];
  const reason = answer !== undefined && 'reason' in answer ? answer.reason : result.error;
  const note = answer?.note?.trim();
  const detail = [context.zoneOf(result.zoneId).title, ...(reason ? [reason] : []), ...(note ? [`“${note}”`] : [])];
  return { text: context.itemOf(result.itemId).title, detail: detail.join(' · ') };
}

function setAside({ record }: SheetContext): Block[] {
  if (record.setAside.length === 0) return [];
  return [
    { kind: 'paragraph', text: sheetWords.open.setAside(record.setAside.length), tone: 'caution' },
    { kind: 'list', items: record.setAside.map(({ key, reason }) => ({ text: key, detail: reason })) },
  ];
}
