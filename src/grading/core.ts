import type { Checklist, Item, RiskLevel } from '../schema/checklist.ts';
import { GRADES, gradeRank } from '../schema/grade.ts';
import { itemRisk } from './item-risk.ts';

/** Risk as a number that grows with it; 0 is no risk at all. */
export const RISK_RANKS = [null, 'low', 'medium', 'serious', 'high'] as const;
export const MEDIUM = 2;

/**
 * A definition as plain arrays, one place per item, zone or hazard in definition order. Grading reads these several
 * hundred times over, so names are looked up once, here.
 */
export interface Core {
  items: readonly CoreItem[];
  zoneWeight: readonly number[];
  hazardCount: number;
  /** By gradeRank. */
  credit: readonly number[];
  /** By risk rank. */
  k: readonly number[];
}

export interface CoreItem {
  zone: number;
  /** Place of the hazard; −1 for none. */
  hazard: number;
  weight: number;
  stop: boolean;
  /** By gradeRank, the rank of the risk it brings. */
  risk: readonly number[];
}

export function coreOf(definition: Checklist): Core {
  const { zones, hazards, credits, k } = definition;
  const zoneAt = placesOf(zones);
  const hazardAt = placesOf(hazards);
  return {
    items: definition.items.map((item) => ({
      zone: placeIn(zoneAt, item.zone),
      hazard: item.hazard === undefined ? -1 : placeIn(hazardAt, item.hazard),
      weight: item.weight,
      stop: item.stop,
      risk: riskRanks(item),
    })),
    zoneWeight: zones.map(({ weight }) => weight),
    hazardCount: hazards.length,
    credit: GRADES.map((grade) => credits[grade]),
    k: RISK_RANKS.map((level) => (level === null ? 1 : k[level])),
  };
}

export function riskAt(rank: number): RiskLevel | null {
  return RISK_RANKS[rank] ?? null;
}

/** Place of each id in its list. */
export function placesOf(list: readonly { id: string }[]): ReadonlyMap<string, number> {
  return new Map(list.map(({ id }, place) => [id, place]));
}

export function placeIn(places: ReadonlyMap<string, number>, id: string): number {
  const place = places.get(id);
  if (place === undefined) throw new RangeError(`placeIn: id must be one the definition names, got ${id}`);
  return place;
}

function riskRanks(item: Item): number[] {
  const ranks = [0, 0, 0, 0];
  for (const grade of GRADES) {
    const risk = itemRisk(item, grade)?.risk ?? null;
    ranks[gradeRank(grade)] = RISK_RANKS.indexOf(risk);
  }
  return ranks;
}
