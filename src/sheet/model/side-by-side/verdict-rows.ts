import type { Range } from '../../../grading/grading.ts';
import { formatFixed, formatScore, formatSpan } from '../../../text/format-number.ts';
import { ROUTE_WORDS } from '../../../text/sheet.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import { VERDICT_WORDS, verdictWords } from '../../../text/verdict.ts';
import type { GridRow } from '../sheet.ts';
import { cell, type GridCell, gridRow, noteOf } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

/** Rank, verdict, score, Build and factor, all on the items common to the group. */
export function verdictRows(columns: readonly PackColumn[]): GridRow[] {
  const row = (id: 'rank' | 'verdict' | 'score' | 'build' | 'factor', cellOf: (column: PackColumn) => GridCell) =>
    gridRow({ id, group: null, label: say.labels[id], cells: columns.map(cellOf) });
  const nameOf = (packId: string) => columns.find((column) => column.packId === packId)?.name ?? packId;
  const isOneGroup = columns.every(({ group }) => group === columns[0]?.group);
  return [
    row('rank', (column) => rankCell(column, { nameOf, isOneGroup })),
    row('verdict', verdictCell),
    row('score', (column) => cell(scoreText(column))),
    row('build', (column) => rangeCell(column, column.member.build)),
    row('factor', ({ member: { factor, settled, notRanked } }) =>
      cell(
        notRanked === 'stop' ? say.withheld : `×\u00a0${settled ? formatFixed(factor.low, 2) : formatSpan(factor, 2)}`,
      ),
    ),
  ];
}

/** "58.9", "52.1–66.4", or why there is none. */
export function scoreText({ member: { score, settled, notRanked } }: PackColumn): string {
  if (score === null) return notRanked === 'stop' ? say.withheld : say.nothingToScore;
  return formatScore(score, settled);
}

/** The verdict in one line, both ends where it is not settled. */
export function verdictText(verdict: PackColumn['grading']['verdict']): string {
  const { low, high } = verdict;
  return low === high ? VERDICT_WORDS[low].title : say.atWorst(VERDICT_WORDS[low].title, VERDICT_WORDS[high].title);
}

interface Naming {
  nameOf: (packId: string) => string;
  isOneGroup: boolean;
}

function rankCell({ group, member }: PackColumn, { nameOf, isOneGroup }: Naming): GridCell {
  if (member.rank === null) return cell(say.none, member.notRanked === null ? null : say.notRanked[member.notRanked]);
  const ranked = group.members.filter(({ rank }) => rank !== null).length;
  if (ranked === 1) return cell(say.none, say.alone);
  return cell(
    say.rank(member.rank, ranked),
    noteOf([
      isOneGroup ? null : say.rankGroup(ROUTE_WORDS[group.route]),
      member.tiedPackIds.length === 0 ? null : say.tiedWith(member.tiedPackIds.map(nameOf)),
    ]),
  );
}

function verdictCell({ member: { verdict, worseOnItsOwn }, grading }: PackColumn): GridCell {
  const { title, settled } = verdictWords(verdict);
  return cell(
    title,
    noteOf([settled ? null : verdictText(verdict), worseOnItsOwn ? say.onItsOwn(verdictText(grading.verdict)) : null]),
  );
}

function rangeCell({ member: { settled, notRanked } }: PackColumn, range: Range | null): GridCell {
  if (range === null || notRanked === 'stop') return cell(notRanked === 'stop' ? say.withheld : say.nothingToScore);
  return cell(formatScore(range, settled));
}
