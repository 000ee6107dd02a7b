import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult } from '../../../grading/live-tests/results.ts';
import type { ChosenPrice } from '../../../grading/side-by-side/chosen-price.ts';
import type { Compared, Protection, RankGroup, RankMember } from '../../../grading/side-by-side/side-by-side.ts';
import type { Checklist } from '../../../schema/checklist.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import { words } from '../../../text/words.ts';
import { packName } from '../sheet-head.ts';
import type { SideBySideInput } from './side-by-side-input.ts';

/** All that is said of one pack, in one place. */
export interface PackColumn extends Compared {
  /** Told apart from the others. */
  name: string;
  /** Sample and "invented demo", where the name does not say it. */
  mark: string | null;
  group: RankGroup;
  member: RankMember;
  /** The newest definition of its group: its zones and their order count for all. */
  weighing: Checklist;
  price: ChosenPrice | null;
  protections: readonly Protection[];
  /** False of a closed sheet that stands here by another record than was sealed. */
  isAsSealed: boolean;
  /** Null where a figure is so far out that nothing can be worked out. */
  capacity: CapacityResult | null;
}

/**
 * The packs in the order in which they stand: groups as given, ranked ones first.
 *
 * Throws  RangeError if result, prices or protections do not belong to the packs.
 */
export function packColumns(input: SideBySideInput): PackColumn[] {
  const { compared, result, prices, protections, unsealedIds } = input;
  if (prices.length !== compared.length || protections.length !== compared.length) {
    throw new RangeError(
      `makeSideBySide: prices and protections must be one a pack (${compared.length}), got ${prices.length} and ${protections.length}`,
    );
  }
  const names = tellApart(compared);
  return result.groups.flatMap((group) =>
    group.members.map((member) => {
      const place = compared.findIndex(({ packId }) => packId === member.packId);
      const pack = compared[place];
      if (pack === undefined) {
        throw new RangeError(`makeSideBySide: every ranked pack must be one compared, got ${member.packId}`);
      }
      return {
        ...pack,
        name: names[place]?.name ?? packName(pack),
        mark: names[place]?.mark ?? null,
        group,
        member,
        weighing: weighingOf(compared, group, pack),
        price: prices[place] ?? null,
        protections: protections[place] ?? [],
        isAsSealed: !unsealedIds.includes(pack.packId),
        capacity: capacityOrNull(pack),
      };
    }),
  );
}

function weighingOf(compared: readonly Compared[], group: RankGroup, pack: Compared): Checklist {
  const found = compared.find(
    ({ definition }) => definition.id === group.checklistId && definition.version === group.weighedBy,
  );
  return (found ?? pack).definition;
}

/** By the sample where names are the same, by a number where that is the same too. */
function tellApart(compared: readonly Compared[]): { name: string; mark: string | null }[] {
  const plain = compared.map((pack) => packName(pack));
  const sampled = compared.map(({ record }, place) => {
    const name = plain[place] ?? '';
    const { sample } = record.nameplate;
    const isTwin = plain.filter((other) => other === name).length > 1;
    return isTwin && sample !== undefined ? say.twin(name, words.sample(sample)) : name;
  });
  return compared.map(({ record }, place) => {
    const name = sampled[place] ?? '';
    const { sample } = record.nameplate;
    const earlier = sampled.slice(0, place).filter((other) => other === name).length;
    const isTwin = sampled.filter((other) => other === name).length > 1;
    const marks = [
      ...(sample === undefined || name !== plain[place] ? [] : [words.sample(sample)]),
      ...(record.demo ? [words.inventedDemo] : []),
    ];
    return {
      name: isTwin ? say.numbered(name, earlier + 1) : name,
      mark: marks.length === 0 ? null : marks.join(' · '),
    };
  });
}

function capacityOrNull({ record }: Compared): CapacityResult | null {
  try {
    return capacityResult(record);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
