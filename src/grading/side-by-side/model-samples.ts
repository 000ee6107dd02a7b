import type { Range } from '../grading.ts';
import type { Compared, ModelSamples, RankGroup } from './side-by-side.ts';

/**
 * Gathers samples of one model: same maker and model on the nameplate (else the same name), whatever the case of the
 * letters and the space around them, or begun as another sample of a pack that is here.
 *
 * Shape   packs and the groups they are ranked in, models out in the order of the packs.
 * Check   tests/grading/side-by-side/model-samples.test.ts
 */
export function modelSamples(packs: readonly Compared[], groups: readonly RankGroup[]): ModelSamples[] {
  const models: Compared[][] = [];
  for (const pack of packs) {
    const kin = models.filter((samples) => samples.some((sample) => isSameModel(sample, pack)));
    const [first] = kin;
    if (first === undefined) models.push([pack]);
    else {
      // A pack may join two that had nothing to do with each other before it.
      first.push(...kin.slice(1).flat(), pack);
      for (const other of kin.slice(1)) models.splice(models.indexOf(other), 1);
    }
  }
  return models.map((samples) => {
    const ordered = packs.filter((pack) => samples.includes(pack));
    const packIds = ordered.map(({ packId }) => packId);
    return { name: nameOf(ordered), packIds, ...scoresOf(packIds, groups) };
  });
}

function isSameModel(one: Compared, other: Compared): boolean {
  const key = keyOf(one);
  return (key !== null && key === keyOf(other)) || isSampleOf(one, other) || isSampleOf(other, one);
}

function isSampleOf({ record: { retestOf } }: Compared, { packId }: Compared): boolean {
  return retestOf !== null && retestOf.kind === 'sample' && retestOf.packId === packId;
}

/** Null where the nameplate says too little: two packs without a name have nothing in common. */
function keyOf({ record: { nameplate } }: Compared): string | null {
  const [maker, model, name] = [nameplate.maker, nameplate.model, nameplate.name].map(folded);
  if (maker && model) return JSON.stringify([maker, model]);
  return name ? JSON.stringify([name]) : null;
}

function folded(text: string | undefined): string | undefined {
  return text?.trim().replace(/\s+/g, ' ').normalize('NFC').toLowerCase();
}

/** As it stands on the first nameplate that says it. */
function nameOf(samples: readonly Compared[]): string {
  const plates = samples.map(({ record: { nameplate } }) => nameplate);
  const full = plates.find(({ maker, model }) => maker?.trim() && model?.trim());
  if (full) return `${full.maker?.trim()} ${full.model?.trim()}`;
  const [said] = plates.flatMap(({ name, model, maker }) => name?.trim() || model?.trim() || maker?.trim() || []);
  return said ?? '';
}

/** By the common items of their group, as they are shown. */
function scoresOf(
  packIds: readonly string[],
  groups: readonly RankGroup[],
): Pick<ModelSamples, 'unscoredCount' | 'isOneGroup' | 'spread'> {
  const byGroup = groups
    .map(({ members }) => members.flatMap(({ packId, score }) => (packIds.includes(packId) ? (score ?? []) : [])))
    .filter((scores) => scores.length > 0);
  const scores = byGroup.flat();
  const isOneGroup = byGroup.length < 2;
  return {
    unscoredCount: packIds.length - scores.length,
    isOneGroup,
    spread: isOneGroup && scores.length > 1 ? spanOf(scores) : null,
  };
}

function spanOf(scores: readonly Range[]): Range {
  return { low: Math.min(...scores.map(({ low }) => low)), high: Math.max(...scores.map(({ high }) => high)) };
}
