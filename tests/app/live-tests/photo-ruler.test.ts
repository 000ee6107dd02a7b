import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardCorners, goesRound, otherSideLong } from '../../../src/app/live-tests/ruler/card-corners.ts';
import { fittingLeads, leadFromRuler } from '../../../src/app/live-tests/ruler/lead-from-ruler.ts';
import { fieldPut, pointsPut, tidiedPoints } from '../../../src/app/live-tests/ruler/ruler-state.ts';
import { distanceWhileSet, distanceWords } from '../../../src/app/live-tests/ruler/ruler-words.ts';
import { isStorable } from '../../../src/app/live-tests/storable-test.ts';
import { leadArea } from '../../../src/grading/live-tests/lead-area.ts';
import type { ImagePoint } from '../../../src/schema/callout.ts';
import { type Lead, leadSchema } from '../../../src/schema/live-tests/lead.ts';

const made = `000001790000000.000000.${'0'.repeat(32)}`;
const ID = 'd'.repeat(32);
const PHOTO_ID = 'e'.repeat(64);
/** 10 px a millimetre, seen straight from above: the card 856 × 539.8 px in a photo of 2000 × 1000 px. */
const PHOTO = { widthPx: 2000, heightPx: 1000 };
const at = (xMm: number, yMm: number): ImagePoint => [(xMm * 10 + 500) / 2000, (yMm * 10 + 100) / 1000];
const CARD = [at(0, 0), at(85.6, 0), at(85.6, 53.98), at(0, 53.98)] as const;
const CROSSED = [CARD[0], CARD[2], CARD[1], CARD[3]];

describe('corners of the card', () => {
  it('set in any of 24 orders go round it and begin with a long side', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...CARD], { minLength: 4 }), (corners) => {
        const [a, b, c, d] = cardCorners(corners, PHOTO) as [ImagePoint, ImagePoint, ImagePoint, ImagePoint];
        expect(goesRound([a, b, c, d], PHOTO)).toBe(true);
        for (const [from, to] of [
          [a, b],
          [c, d],
        ] as const) {
          expect(Math.hypot((from[0] - to[0]) * 2000, (from[1] - to[1]) * 1000)).toBeCloseTo(856, 6);
        }
      }),
    );
  });

  it('in order are left as they are; the other side is the long one after a quarter turn', () => {
    expect(cardCorners(CARD, PHOTO)).toEqual([...CARD]);
    expect(otherSideLong(CARD)).toEqual([CARD[1], CARD[2], CARD[3], CARD[0]]);
    expect(goesRound(CROSSED, PHOTO)).toBe(false);
  });
});

describe('points while they are set', () => {
  it('are put in order with the fourth corner, not before', () => {
    expect(tidiedPoints([], CROSSED.slice(0, 3), PHOTO)).toEqual(CROSSED.slice(0, 3));
    expect(goesRound(tidiedPoints(CROSSED.slice(0, 3), CROSSED, PHOTO), PHOTO)).toBe(true);
  });

  it('keep the long side a person chose while a corner is shifted', () => {
    const turned = otherSideLong(CARD);
    const shifted = [at(85.6, 1), ...turned.slice(1)];
    expect(tidiedPoints(turned, shifted, PHOTO)).toEqual(shifted);
  });

  it('tell 40 mm as about 40 mm, and nothing before the sixth', () => {
    const ends = [at(10, 60), at(50, 60)];
    expect(distanceWhileSet([...CARD, ...ends], PHOTO, 'metric')).toBe('about 40\u00a0mm');
    expect(distanceWhileSet([...CARD, ...ends.slice(0, 1)], PHOTO, 'metric')).toBe('');
  });

  it('are an entry once all six are there, with what was noted of it before', () => {
    const ends = [at(10, 60), at(50, 60)] as const;
    const ruler = { id: ID, photoId: PHOTO_ID };
    expect(pointsPut({ ...ruler, before: undefined }, [...CARD, ends[0]])).toBeNull();
    const put = pointsPut({ ...ruler, before: undefined }, [...CARD, ...ends]);
    const value = { photoId: PHOTO_ID, corners: [...CARD], from: ends[0], to: ends[1] };
    expect(put).toEqual({ subject: 'ruler', part: ID, v: { ...value, made: null } });
    expect(isStorable('ruler', value)).toBe(true);
    const stored = { ...value, corners: [...CARD] as [ImagePoint, ImagePoint, ImagePoint, ImagePoint], id: ID, made };
    expect(fieldPut(stored, 'offPlaneMm', 0)).toEqual({
      subject: 'ruler',
      part: ID,
      v: { ...value, offPlaneMm: 0, made },
    });
    expect(fieldPut({ ...stored, offPlaneMm: 0 }, 'offPlaneMm', null)).toMatchObject({ v: { ...value, made } });
  });
});

describe('a distance in words', () => {
  const found = { distanceMm: 8.0078, uncertaintyMm: 0.357, placementMm: 0.35, offPlaneMm: 0.05 };

  it('has its uncertainty to two digits, or only “about” where none can be told', () => {
    expect(distanceWords(found, 'metric')).toBe('8.01\u00a0mm ± 0.36\u00a0mm');
    expect(distanceWords({ ...found, uncertaintyMm: null, offPlaneMm: null }, 'metric')).toBe('about 8.01\u00a0mm');
  });
});

describe('a distance as a lead', () => {
  const input = {
    rulerId: ID,
    distance: { distanceMm: 8, uncertaintyMm: 0.4 },
    into: { id: 'f'.repeat(32), place: 'main' as const, on: '2026-05-03' },
    insulationDegC: 105,
  };
  const leadOf = (put: ReturnType<typeof leadFromRuler>) => ('v' in put ? (put.v as Lead) : ({} as Lead));

  it('over bare strands is a cable of 8 mm: π/4 · 8² · (0.75 ± 0.05), ± 2 · 0.4/8: 37.7 mm², from 33.2 to 42.2', () => {
    const lead = leadOf(leadFromRuler({ ...input, use: 'bareStrands' }));
    expect(lead).toMatchObject({ form: 'cable', way: 'bareStrands', diameterMm: 8, rulerId: ID, insulationDegC: 105 });
    expect(isStorable('lead', { ...lead })).toBe(true);
    const { areaMm2 } = leadArea(lead);
    const relative = Math.hypot(0.05 / 0.75, 0.8 / 8);
    expect(areaMm2?.best).toBeCloseTo(Math.PI * 16 * 0.75, 9);
    expect(areaMm2?.low).toBeCloseTo(Math.PI * 16 * 0.75 * (1 - relative), 9);
    expect(areaMm2?.high).toBeCloseTo(Math.PI * 16 * 0.75 * (1 + relative), 9);
  });

  it('typed over since, the photo’s uncertainty counts no more: 7.9 mm by a calliper is ± the fill alone', () => {
    const lead = leadOf(leadFromRuler({ ...input, use: 'bareStrands' }));
    const { areaMm2 } = leadArea({ ...lead, diameterMm: 7.9 });
    expect(areaMm2?.low).toBeCloseTo((Math.PI / 4) * 7.9 ** 2 * 0.7, 9);
  });

  it('over insulation is kept and gives no section; a bar of 8 ± 0.4 mm by 2 mm is 15.2 to 16.8 mm²', () => {
    const over = leadOf(leadFromRuler({ ...input, use: 'overInsulation' }));
    expect(leadArea(over)).toEqual({ areaMm2: null, areaRefused: 'overInsulation' });
    const bar = leadOf(leadFromRuler({ ...input, use: 'barWidth' }));
    expect(bar).toMatchObject({ form: 'bar', widthMm: 8 });
    expect(bar).not.toHaveProperty('insulationDegC');
    const { areaMm2 } = leadArea({ ...bar, thicknessMm: 2 });
    expect([areaMm2?.low, areaMm2?.best, areaMm2?.high].map((mm2) => mm2?.toFixed(9))).toEqual([
      '15.200000000',
      '16.000000000',
      '16.800000000',
    ]);
  });

  it('put into a lead that is there keeps what is known of it', () => {
    const into: Lead & { id: string } = { id: ID, made, place: 'sense', form: 'cable', note: 'thin', lengthMm: 120 };
    const put = leadFromRuler({ ...input, use: 'bareStrands', into, insulationDegC: null });
    expect(put).toEqual({
      subject: 'lead',
      part: ID,
      v: {
        place: 'sense',
        form: 'cable',
        note: 'thin',
        lengthMm: 120,
        way: 'bareStrands',
        diameterMm: 8,
        rulerId: ID,
        byPhoto: { mm: 8, plusMinusMm: 0.4 },
        made,
      },
    });
    expect(leadSchema.entries.byPhoto).toBeDefined();
  });

  it('is offered to leads of its form that are not known in another way', () => {
    const lead = (id: string, change: Partial<Lead>) => ({
      id,
      made,
      place: 'main' as const,
      form: 'cable' as const,
      ...change,
    });
    const leads = [
      lead('printed', { way: 'printed', printedAwg: '4' }),
      lead('bare', { way: 'bareStrands' }),
      lead('open', {}),
      lead('bar', { form: 'bar' }),
    ];
    expect(fittingLeads(leads, 'bareStrands').map(({ id }) => id)).toEqual(['bare', 'open']);
    expect(fittingLeads(leads, 'barWidth').map(({ id }) => id)).toEqual(['bar']);
  });
});
