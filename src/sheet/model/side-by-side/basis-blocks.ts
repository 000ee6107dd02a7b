import type { RankGroup, SideBySide } from '../../../grading/side-by-side/side-by-side.ts';
import { formatSpan } from '../../../text/format-number.ts';
import { listOf, ROUTE_WORDS } from '../../../text/sheet.ts';
import { sideBySideWords } from '../../../text/side-by-side.ts';
import type { Block } from '../sheet.ts';
import type { PackColumn } from './pack-columns.ts';
import { verdictText } from './verdict-rows.ts';
import { voltageLines } from './voltage-lines.ts';

const say = sideBySideWords.basis;

/** What is compared with what, and what must not be read from it. */
export function basisBlocks(columns: readonly PackColumn[], { groups, models }: SideBySide): Block[] {
  const nameOf = (packId: string) => columns.find((column) => column.packId === packId)?.name ?? packId;
  return [
    ...groups.flatMap((group) => groupBlocks(group, nameOf)),
    ...lines([
      ...(groups.length > 1 ? [say.apart] : []),
      ...tieLines(groups, nameOf),
      ...columns
        .filter(({ member }) => member.worseOnItsOwn)
        .map(({ name, grading }) => say.worse(name, verdictText(grading.verdict))),
      ...sampleLines(models),
      say.own,
      ...voltageLines(columns),
      ...currencyLines(columns),
      ...(columns.some(({ price }) => (price?.options.length ?? 0) > 0) ? [say.options] : []),
    ]),
  ];
}

type NameOf = (packId: string) => string;

function groupBlocks(group: RankGroup, nameOf: NameOf): Block[] {
  const names = group.members.map(({ packId }) => nameOf(packId));
  const { leftOut } = group;
  const common = say.common(names, {
    checklist: sideBySideWords.checklist(group.checklistId, listOf(group.versions)),
    route: ROUTE_WORDS[group.route],
    count: group.commonItemIds.length,
  });
  return [
    { kind: 'paragraph', text: common, tone: 'plain' },
    ...(group.versions.length < 2
      ? []
      : [{ kind: 'paragraph', text: say.weighed(group.weighedBy), tone: 'plain' } satisfies Block]),
    ...(leftOut.length === 0
      ? []
      : ([
          { kind: 'subhead', text: say.leftOut },
          {
            kind: 'list',
            items: leftOut.map(({ title, askedPackIds }) => ({
              text: title,
              detail: say.askedOf(askedPackIds.map(nameOf)),
            })),
          },
        ] satisfies Block[])),
  ];
}

/** Each tie once, said of the one that stands first. */
function tieLines(groups: readonly RankGroup[], nameOf: NameOf): string[] {
  const ties = groups.flatMap(({ members }) =>
    members.flatMap(({ packId, tiedPackIds }, place) => {
      const later = members.slice(place + 1).filter((other) => tiedPackIds.includes(other.packId));
      return later.length === 0 ? [] : [say.tie(nameOf(packId), listOf(later.map((other) => nameOf(other.packId))))];
    }),
  );
  return ties.length === 0 ? [] : [...ties, say.ties];
}

function sampleLines(models: SideBySide['models']): string[] {
  const single = models.filter(({ packIds }) => packIds.length === 1).map(({ name }) => name);
  const several = models.filter(({ packIds }) => packIds.length > 1);
  return [
    ...several.map(({ name, packIds, unscoredCount, isOneGroup, spread }) => {
      const samples = say.samplesOf(packIds.length, name, unscoredCount);
      if (spread !== null) return say.samples(samples, formatSpan(spread));
      return isOneGroup ? say.samplesUnscored(samples) : say.samplesApart(samples);
    }),
    ...(single.length === 0 ? [] : [say.oneSample([...new Set(single)])]),
  ];
}

function currencyLines(columns: readonly PackColumn[]): string[] {
  const currencies = [...new Set(columns.flatMap(({ price }) => price?.currency ?? []))];
  return currencies.length < 2 ? [] : [say.currencies(currencies)];
}

function lines(texts: readonly string[]): Block[] {
  return [{ kind: 'list', items: texts.map((text) => ({ text })) }];
}
