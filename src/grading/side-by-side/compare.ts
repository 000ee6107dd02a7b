import { canonicalJson } from '../../record/canonical-json.ts';
import type { Checklist } from '../../schema/checklist.ts';
import { commonGround } from './common-ground.ts';
import { type Judgement, judgeOnCommon } from './judge-on-common.ts';
import { modelSamples } from './model-samples.ts';
import {
  type Compared,
  type FirmnessInput,
  MOST_PACKS,
  type RankGroup,
  type RankMember,
  type SideBySide,
} from './side-by-side.ts';
import { type Placed, standsAbove, verdictRank } from './stands-above.ts';
import { majorOf } from './version-order.ts';

/** A pack as it is judged on the common items; `placed` only where it can be ranked. */
interface Judged {
  pack: Compared;
  judgement: Judgement;
  placed: Placed | null;
}

/**
 * Sets packs side by side: ranks those that were asked the same against one another, and gathers samples of one model.
 * Nothing is rounded.
 *
 * Shape   up to 8 packs, each once.
 * Throws  RangeError for more, for a pack given twice, or for two definitions that claim one id and version.
 * Source  DESIGN §5, "Side by side"
 * Check   tests/grading/side-by-side/compare.test.ts
 */
export function sideBySide(packs: readonly Compared[]): SideBySide {
  if (packs.length > MOST_PACKS) {
    throw new RangeError(`sideBySide: must be given at most ${MOST_PACKS} packs, got ${packs.length}`);
  }
  const ids = packs.map(({ packId }) => packId);
  const twice = ids.find((id, place) => ids.indexOf(id) !== place);
  if (twice !== undefined) throw new RangeError(`sideBySide: must be given each pack once, got ${twice} twice`);
  const groups = askedTheSame(packs).map(rankGroup);
  return { groups, models: modelSamples(packs, groups) };
}

/** One checklist, one major version, one route; never empty. */
type Alike = [Compared, ...Compared[]];

function askedTheSame(packs: readonly Compared[]): Alike[] {
  const groups = new Map<string, Alike>();
  for (const pack of packs) {
    const { id, version } = pack.definition;
    const key = JSON.stringify([id, majorOf(version), pack.record.route]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [pack]);
    else group.push(pack);
  }
  return [...groups.values()];
}

function rankGroup(packs: Alike): RankGroup {
  const [first] = packs;
  const { route } = first.record;
  const { definition, versions, leftOut } = commonGround(oneOfEachVersion(packs), route);
  const judged = packs.map((pack): Judged => {
    const judgement = judgeOnCommon(definition, pack);
    const { score, verdict, notRanked } = judgement;
    return { pack, judgement, placed: score === null || notRanked !== null ? null : { score, verdict } };
  });
  const members = judged.map((one) => memberOf(one, judged));
  return {
    checklistId: definition.id,
    major: majorOf(definition.version),
    route,
    versions,
    weighedBy: definition.version,
    commonItemIds: definition.items.map(({ id }) => id),
    leftOut: leftOut.map(({ itemId, title, versions: asking }) => ({
      itemId,
      title,
      askedPackIds: packs.filter((pack) => asking.includes(pack.definition.version)).map(({ packId }) => packId),
    })),
    members: members.toSorted((a, b) => (a.rank ?? MOST_PACKS + 1) - (b.rank ?? MOST_PACKS + 1)),
    firmness: firmnessInput(definition, judged),
  };
}

/** A version is what it says it is: a changed definition bears another number. */
function oneOfEachVersion(packs: Alike): Checklist[] {
  const byVersion = new Map<string, Checklist>();
  for (const { definition } of packs) {
    const { id, version } = definition;
    const known = byVersion.get(version) ?? definition;
    if (known !== definition && canonicalJson(known) !== canonicalJson(definition)) {
      throw new RangeError(`sideBySide: version ${version} of ${id} must be one definition, got two that differ`);
    }
    byVersion.set(version, known);
  }
  return [...byVersion.values()];
}

function memberOf({ pack, judgement, placed }: Judged, judged: readonly Judged[]): RankMember {
  const { zones: _zones, risks: _risks, ...result } = judgement;
  const others = judged.filter((other) => other.pack !== pack);
  const those = (holds: (x: Placed, y: Placed) => boolean) =>
    placed === null
      ? []
      : others.flatMap((other) => (other.placed && holds(placed, other.placed) ? other.pack.packId : []));
  const belowPackIds = those((self, other) => standsAbove(other, self));
  return {
    packId: pack.packId,
    ...result,
    worseOnItsOwn: verdictRank(pack.grading.verdict.low) < verdictRank(judgement.verdict.low),
    rank: placed === null ? null : 1 + belowPackIds.length,
    belowPackIds,
    tiedPackIds: those((self, other) => !standsAbove(other, self) && !standsAbove(self, other)),
  };
}

function firmnessInput(definition: Checklist, judged: readonly Judged[]): FirmnessInput | null {
  const packs = judged.flatMap(({ pack: { packId }, placed, judgement: { zones, risks } }) =>
    placed === null ? [] : { packId, ...placed, zones, risks },
  );
  return packs.length < 2 ? null : { zoneWeights: definition.zones.map(({ weight }) => weight), packs };
}
