import type { PhotoRuler } from '../../../calc/photo-ruler.ts';
import type { Lead, LeadPlace } from '../../../schema/live-tests/lead.ts';
import type { Named } from '../../../schema/live-tests/live-tests.ts';
import type { Put } from '../../../storage/store.ts';
import { isProvisional } from '../../state/provisional.ts';

export const RULER_USES = ['bareStrands', 'overInsulation', 'barWidth'] as const;
export type RulerUse = (typeof RULER_USES)[number];

interface LeadFromRuler {
  use: RulerUse;
  rulerId: string;
  distance: Pick<PhotoRuler, 'distanceMm'> & { uncertaintyMm: number | null };
  /** The lead that is filled in, or where a new one lies. */
  into: Named<Lead> | { id: string; place: LeadPlace; on: string };
  insulationDegC: number | null;
}

/** The entry of a lead whose diameter or width is a distance on a photo. What else is known of it stays. */
export function leadFromRuler({ use, rulerId, distance, into, insulationDegC }: LeadFromRuler): Put {
  const { id, made, ...others }: Record<string, unknown> & { id: string; made?: unknown } = { ...into };
  const { distanceMm, uncertaintyMm } = distance;
  const { byPhoto: _old, ...kept } = others;
  const size =
    use === 'barWidth' ? { form: 'bar', widthMm: distanceMm } : { form: 'cable', way: use, diameterMm: distanceMm };
  const v = {
    ...kept,
    ...size,
    rulerId,
    ...(uncertaintyMm !== null && { byPhoto: { mm: distanceMm, plusMinusMm: uncertaintyMm } }),
    ...(insulationDegC !== null && use !== 'barWidth' && { insulationDegC }),
    made: typeof made === 'string' && !isProvisional(made) ? made : null,
  };
  return { subject: 'lead', part: id, v };
}

/** Leads a distance may be put into: of the same form, and not known in another way. */
export function fittingLeads(leads: readonly Named<Lead>[], use: RulerUse): Named<Lead>[] {
  return leads.filter(({ form, way }) =>
    use === 'barWidth' ? form === 'bar' : form === 'cable' && (way === undefined || way === use),
  );
}
