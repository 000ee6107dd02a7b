import type { ChangesSince, ScoresApart, StandingOnce } from '../../grading/changes-since.ts';
import type { FigureChange, FigureOnce } from '../../grading/figure-changes.ts';
import type { ItemResult } from '../../grading/grading.ts';
import { findingOf, type ItemChange, type ItemChanges } from '../../grading/item-changes.ts';
import type { RetestOf } from '../../schema/closing.ts';
import { formatScore } from '../../text/format-number.ts';
import { formatPrice } from '../../text/format-unit.ts';
import { BECAUSE_WORDS, GRADE_WORDS, OUTCOME_WORDS } from '../../text/grades.ts';
import { figureIn, plusMinus, plusMinusMoney, signedIn } from '../../text/live-tests/results/figures.ts';
import { testWords } from '../../text/live-tests/results/test.ts';
import { ROUTE_WORDS, sheetWords } from '../../text/sheet.ts';
import { sinceWords as say } from '../../text/since.ts';
import { verdictWords } from '../../text/verdict.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';
import { claimLabel, claimValue } from './claim-words.ts';
import type { Block, ListBlock, TableBlock } from './sheet.ts';

/** The earlier pack that a record was begun from: what changed since, or why that cannot be said. */
export type Since = { label: string; kind: RetestOf['kind'] } & (
  | { here: true; changes: ChangesSince; currency: { was: string | undefined; now: string | undefined } }
  | { here: false; because: 'absent' | 'noDefinition' }
);

type Row = TableBlock['rows'][number];

/** "Since the earlier sample": scores, items, delivered figures and nameplate of both, side by side. */
export function sinceBlocks(since: Since | null | undefined, units: UnitChoice): Block[] {
  if (!since) return [];
  const lead = muted(say.lead[since.kind](since.label));
  if (!since.here) return [lead, { kind: 'paragraph', text: say.notHere[since.because](since.label), tone: 'plain' }];
  const { changes } = since;
  return [
    lead,
    ...scoreBlocks(changes),
    ...(changes.items === null ? [] : itemBlocks(changes.items)),
    ...figureBlocks(changes.figures),
    ...claimBlocks(since, units),
  ];
}

function scoreBlocks(changes: ChangesSince): Block[] {
  const { was, now, apart, scoreWent } = changes;
  const { scores } = say;
  const rows: Row[] = [
    { label: scores.score.was, value: scoreOf(was), note: byWords(was) },
    { label: scores.score.now, value: scoreOf(now), note: byWords(now) },
    { label: scores.verdict.was, ...verdictRow(was) },
    { label: scores.verdict.now, ...verdictRow(now) },
  ];
  const said = apart === null ? scoreWent && scores.went[scoreWent] : apartWords(apart, changes);
  return [
    { kind: 'subhead', text: scores.subhead },
    { kind: 'table', rows },
    ...(said ? [{ kind: 'paragraph', text: said, tone: 'plain' } satisfies Block] : []),
  ];
}

function apartWords(apart: ScoresApart, { was, now }: ChangesSince): string {
  const words = say.scores.apart;
  if (apart === 'routes') return words.routes;
  if (apart === 'versions') return words.versions(was.version, now.version);
  return words.checklists(`${was.checklistId} ${was.version}`, `${now.checklistId} ${now.version}`);
}

function scoreOf({ score, settled, stop }: StandingOnce): string {
  if (score !== null) return formatScore(score, settled);
  return stop === 'failed' ? say.scores.withheld : say.scores.nothing;
}

function byWords({ route, settled, version }: StandingOnce): string {
  return say.scores.by(ROUTE_WORDS[route], say.scores.settled(settled), version);
}

/** An unsettled verdict says both ends in its line; of a settled one the name is enough. */
function verdictRow({ verdict }: StandingOnce): { value: string; note?: string } {
  const { title, line, settled } = verdictWords(verdict);
  return settled ? { value: title } : { value: title, note: line };
}

function itemBlocks(items: ItemChanges): Block[] {
  const lists = (['appeared', 'worse', 'better', 'foundBoth', 'gone', 'notLookedAgain'] as const).flatMap(
    (name): Block[] => {
      const list = items[name];
      if (list.length === 0) return [];
      return [{ kind: 'subhead', text: say.items[name] }, itemList(list)];
    },
  );
  const counts = [
    say.items.counts(items.comparedCount),
    ...counted(items.sameCount, say.items.same),
    ...counted(items.openCount, say.items.open),
    ...counted(items.appliesToOneCount, say.items.appliesToOne),
    ...counted(items.onlyThenCount, say.items.onlyThen),
    ...counted(items.onlyNowCount, say.items.onlyNow),
  ];
  return [
    ...(lists.length === 0 ? [{ kind: 'paragraph', text: say.items.none, tone: 'plain' } satisfies Block] : lists),
    muted(counts.join(' ')),
  ];
}

function counted(count: number, words: (count: number) => string): string[] {
  return count === 0 ? [] : [words(count)];
}

function itemList(changes: readonly ItemChange[]): ListBlock {
  return {
    kind: 'list',
    items: changes.map(({ title, was, now, reworded }) => ({
      text: `${title}:`,
      detail: [say.items.change(outcomeNow(now), outcomeThen(was)), ...(reworded ? [say.items.reworded] : [])].join(
        '; ',
      ),
    })),
  };
}

function outcomeNow(result: ItemResult): string {
  if (findingOf(result) === 'open') return say.items.isOpen(BECAUSE_WORDS[result.because]);
  return say.items.isNow(outcomeOf(result));
}

function outcomeThen(result: ItemResult): string {
  if (findingOf(result) === 'open') return say.items.wasOpen(BECAUSE_WORDS[result.because]);
  return say.items.wasThen(outcomeOf(result));
}

/** "failed", "maybe failed" while it may still not apply, "sound or passable" where it was measured in part. */
function outcomeOf({ grade, possible }: ItemResult): string {
  if (grade !== null) return possible.length > 1 ? sheetWords.findings.mayBe(GRADE_WORDS[grade]) : GRADE_WORDS[grade];
  return possible.map((outcome) => OUTCOME_WORDS[outcome]).join(' or ');
}

function figureBlocks(figures: readonly FigureChange[]): Block[] {
  if (figures.length === 0) return [];
  const isJudged = figures.some(({ difference }) => difference !== null && difference.uncertainty !== null);
  return [
    { kind: 'subhead', text: say.figures.subhead },
    { kind: 'table', rows: figures.map(figureRow) },
    ...(isJudged ? [muted(say.figures.independent)] : []),
  ];
}

function figureRow(change: FigureChange): Row {
  const { what, was, now } = change;
  return {
    label: say.figures.labels[what],
    value: say.both(figureOf(change, was, change.currency.was), figureOf(change, now, change.currency.now)),
    note: tellsWords(change),
  };
}

function figureOf({ what }: FigureChange, once: FigureOnce | null, currency: string | null): string {
  if (once === null) return what === 'costPerKwh' ? say.figures.noCost : say.figures.notMeasured;
  const figure =
    what === 'costPerKwh' ? formatPrice(once.value, currency ?? undefined) : figureIn(once.value, unitOf(what));
  return once.atLeast ? testWords.atLeast(figure) : figure;
}

function tellsWords(change: FigureChange): string {
  const words = say.figures.tells[change.tells];
  return typeof words === 'string' ? words : words(differenceOf(change));
}

function differenceOf({ what, difference, currency }: FigureChange): string {
  if (difference === null) return '';
  const { value, uncertainty } = difference;
  if (what === 'costPerKwh') {
    const money = (amount: number) => formatPrice(amount, currency.now ?? undefined);
    return uncertainty === null ? money(value) : `${money(value)} ${plusMinusMoney(uncertainty, money)}`;
  }
  const unit = unitOf(what);
  const signed = signedIn(Number(value.toPrecision(3)), unit);
  return uncertainty === null ? signed : `${signed} ${plusMinus(uncertainty, unit)}`;
}

function unitOf(what: Exclude<FigureChange['what'], 'costPerKwh'>): string {
  return what === 'chargeAh' ? 'Ah' : 'Wh';
}

function claimBlocks({ changes, currency }: Extract<Since, { here: true }>, units: UnitChoice): Block[] {
  if (changes.claims.length === 0) return [];
  const rows = changes.claims.map(({ field, was, now }) => ({
    label: claimLabel(field),
    value: say.both(
      claimValue(field, was, { units, currency: currency.was }),
      claimValue(field, now, { units, currency: currency.now }),
    ),
  }));
  return [
    { kind: 'subhead', text: say.claims.subhead },
    { kind: 'table', rows },
  ];
}

function muted(text: string): Block {
  return { kind: 'paragraph', text, tone: 'muted' };
}
